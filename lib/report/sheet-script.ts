/**
 * All that a proof sheet does by script: tells what a note sounds under the pointer or the keyboard, moves from note to
 * note by the arrow keys, and draws systems of long parts when they come near.
 */
export const SHEET_SCRIPT = `
const tip = document.querySelector('.tip')
const music = document.querySelector('.systems')
let shown = []
const show = (note) => {
  for (const each of shown) each.classList.remove('here')
  shown = note && note.dataset.p ? [...music.querySelectorAll('.n[data-p="' + note.dataset.p + '"]')] : note ? [note] : []
  for (const each of shown) each.classList.add('here')
  tip.hidden = !note
  if (!note) return
  tip.textContent = note.getAttribute('aria-label')
  const box = note.getBoundingClientRect()
  const left = Math.max(8, Math.min(box.left, innerWidth - tip.offsetWidth - 8))
  const above = box.top - tip.offsetHeight - 8
  tip.style.left = left + 'px'
  tip.style.top = (above > 4 ? above : box.bottom + 8) + 'px'
}
const noteOf = (target) => (target instanceof Element ? target.closest('.n') : null)
music.addEventListener('pointerover', (event) => show(noteOf(event.target)))
music.addEventListener('pointerleave', () => show(noteOf(document.activeElement)))
music.addEventListener('focusin', (event) => show(noteOf(event.target)))
music.addEventListener('focusout', () => show(null))
addEventListener('scroll', () => { if (!noteOf(document.activeElement)) show(null) }, {passive: true})
const steps = {ArrowRight: 1, ArrowLeft: -1}
music.addEventListener('keydown', (event) => {
  const note = noteOf(event.target)
  if (!note) return
  if (event.key === 'Escape') return show(null)
  let next
  if (event.key in steps) {
    const system = note.closest('.system')
    const side = note.dataset.s
    const notes = (each) => [...each.querySelectorAll('.n[data-s="' + side + '"]')]
    const own = notes(system)
    next = own[own.indexOf(note) + steps[event.key]]
    let other = system
    while (!next && (other = steps[event.key] > 0 ? other.nextElementSibling : other.previousElementSibling)) {
      if (other.matches('.system')) draw(other)
      next = notes(other).at(steps[event.key] > 0 ? 0 : -1)
    }
  } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
    next = note.dataset.p && [...note.closest('.system').querySelectorAll('.n[data-p="' + note.dataset.p + '"]')].find((each) => each !== note)
  } else return
  event.preventDefault()
  if (next) next.focus()
})
const draw = (system) => {
  const source = system.querySelector('script')
  if (!source) return
  source.insertAdjacentHTML('beforebegin', source.textContent)
  source.remove()
}
const waiting = [...music.querySelectorAll('.system:has(> script)')]
if (waiting.length) {
  const watcher = new IntersectionObserver((entries) => {
    for (const entry of entries) if (entry.isIntersecting) { draw(entry.target); watcher.unobserve(entry.target) }
  }, {rootMargin: '1500px'})
  for (const each of waiting) watcher.observe(each)
  addEventListener('beforeprint', () => waiting.forEach(draw))
}
const follow = () => {
  const name = location.hash.slice(1)
  if (!name || document.getElementById(name)) return
  const system = music.querySelector('.system[data-m~="' + CSS.escape(name) + '"]')
  if (!system) return
  draw(system)
  history.replaceState(null, '', '#')
  location.replace('#' + name)
}
addEventListener('hashchange', follow)
follow()
`
