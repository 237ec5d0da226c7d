import {rules} from '../../lib/rules/index.ts'

const TOKEN =
  /<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<\?[\s\S]*?\?>|<![^[]*?(?:\[[\s\S]*?\]\s*)?>|<[^>]*>|[^<]+/g

const owned = rules.flatMap((rule) => rule.owns)
const ownedElements = new Set(owned.filter((each) => !each.includes('@')))
const ownedAttributes = owned.filter((each) => each.includes('@'))

/**
 * The markup and text of a score that no rule may touch, token by token, cut without the project's own reader: what
 * elements of rules say is left out, and so is white space between elements; comments, instructions and elements that
 * are not the rules' own stay even inside.
 */
export function untouchable(score: string): string[] {
  const kept: string[] = []
  const open: string[] = []
  for (const token of score.match(TOKEN) ?? []) {
    if (/^<[?!]/.test(token) && !token.startsWith('<![CDATA[')) {
      kept.push(token)
      continue
    }
    const name = /^<\/?([^\s/>]+)/.exec(token)?.[1]
    if (name === undefined || token.startsWith('<![')) {
      if (token.trim() !== '' && !isOwned(open)) kept.push(token)
      continue
    }
    if (token.startsWith('</')) open.pop()
    const inside = isOwned([...open, name])
    if (token.endsWith('/>')) {
      // Empty is empty, however it is written: a rule may have had to open the tag.
      if (!inside) kept.push(`${withoutOwned(name, token).slice(0, -2).trimEnd()}>`, `</${name}>`)
      continue
    }
    if (!inside) kept.push(withoutOwned(name, token).replace(/\s+>$/, '>'))
    if (!token.startsWith('</')) open.push(name)
  }
  return kept
}

/** Comments and instructions of a score, in order. */
export function remarks(score: string): string[] {
  return score.match(/<!--[\s\S]*?-->|<\?[\s\S]*?\?>/g) ?? []
}

/** These are a rule's own as holders: what else stands in them is not. */
const holders = new Set(['attributes', 'notations'])

function isOwned(path: readonly string[]): boolean {
  if (holders.has(path.at(-1) ?? '')) return true
  return path.some((name) => !holders.has(name) && ownedElements.has(name))
}

function withoutOwned(name: string, tag: string): string {
  return ownedAttributes
    .filter((each) => each.startsWith(`${name}@`))
    .reduce(
      (text, each) =>
        text.replace(new RegExp(`\\s+${each.split('@')[1]}\\s*=\\s*("[^"]*"|'[^']*')`), ''),
      tag,
    )
}
