import type {Report} from '../diagnostic.ts'
import {foldName} from '../instruments/fold.ts'
import type {Header} from '../musicxml/header.ts'
import type {Identity, PartPlan} from '../plan/plan.ts'
import {childrenNamed, textOf} from '../xml/element.ts'
import {setText} from '../xml/edit.ts'
import type {Edit} from '../xml/edit.ts'

/**
 * Renames an instrument on the title page: words that say the part's old name and nothing else say the new one, and it
 * is told. Words that name it among others, as a title may, are only told.
 */
export function* editCredits(
  header: Header,
  plans: readonly PartPlan[],
  report: Report,
): Iterable<Edit> {
  const {text, root} = header
  const renamed = plans.filter(({identity}) => identity?.former.name)
  if (renamed.length === 0) return
  for (const credit of childrenNamed(root, 'credit')) {
    for (const words of childrenNamed(credit, 'credit-words')) {
      const said = textOf(text, words)
      const exact = renamed.find(({identity}) => identity && says(said, identity))
      if (exact?.identity) {
        report({
          code: 'identity/credit',
          severity: 'info',
          message: 'the title page names the new instrument',
          at: {part: exact.part},
          actual: said,
          expected: exact.identity.name,
        })
        yield setText(words, exact.identity.name)
        continue
      }
      const mentioned = renamed.find(({identity}) => identity && mentions(said, identity))
      if (!mentioned) continue
      report({
        code: 'identity/credit-mentions',
        severity: 'warning',
        message: 'the title page still names the old instrument',
        at: {part: mentioned.part},
        actual: said,
      })
    }
  }
}

function says(said: string, {former}: Identity): boolean {
  return foldName(said).text === foldName(former.name).text
}

function mentions(said: string, {former}: Identity): boolean {
  return ` ${foldName(said).text} `.includes(` ${foldName(former.name).text} `)
}
