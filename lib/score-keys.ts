import {stateAt} from './musicxml/in-force.ts'
import {firstContext} from './musicxml/context.ts'
import type {Context} from './musicxml/context.ts'
import {advance} from './musicxml/measure.ts'
import type {Attributes, Measure} from './musicxml/measure.ts'
import type {Key} from './pitch/key.ts'
import {createKeyVotes} from './survey/agreed-keys.ts'
import type {AgreedKey} from './survey/agreed-keys.ts'
import type {Frame} from './xml/frame.ts'
import {searchText} from './xml/scan.ts'

/** What the parts of a score say about its keys. */
export interface ScoreKeys {
  readonly agreed: readonly AgreedKey[]
  /** No part prints a signature, though some would need one: the score is in open key. */
  readonly open: boolean
}

/** Gathers the keys of all parts in the first reading, as long as one of some parts may turn out to print no signature. */
export interface KeyGathering {
  /** Whether the measures of all parts are wanted still. */
  isOpen(): boolean
  /** Takes a measure that was read. */
  add(measure: Measure): void
  /** Takes a measure that nobody reads otherwise: only when something at the staff's head changes in it is it read. */
  pass(frame: Frame, read: (frame: Frame, context: Context) => Measure): void
  /** The keys on which the parts agree; of use only when it stayed open to the end. */
  keys(): ScoreKeys
}

/** A gathering for parts that get a key from the others, by id, if they have none of their own. */
export function gatherKeys(parts: Iterable<string>): KeyGathering {
  const votes = createKeyVotes()
  const keyless = new Set(parts)
  const contexts = new Map<string, Context>()
  const findAttributes = searchText('<attributes')

  function vote(measure: Measure): void {
    const [first] = measure.attributes
    if (!first) return
    votes.add(measure, stateAt(measure, 1, first.onset))
    const signs = ({onset}: Attributes): boolean => isSigned(stateAt(measure, 1, onset).key)
    if (keyless.has(measure.part) && measure.attributes.some(signs)) keyless.delete(measure.part)
  }

  return {
    isOpen: () => keyless.size > 0,
    add: vote,
    pass(frame, read) {
      const {part = ''} = frame
      const context = contexts.get(part) ?? firstContext(part)
      if (findAttributes(frame.bytes, 0) < 0) {
        contexts.set(part, {...context, measureIndex: context.measureIndex + 1})
        return
      }
      const measure = read(frame, context)
      contexts.set(part, advance(context, measure))
      vote(measure)
    },
    keys: () => ({agreed: votes.agreed(), open: votes.isOpen()}),
  }
}

function isSigned(key: Key | undefined): boolean {
  return key !== undefined && !('fifths' in key && key.fifths === 0)
}
