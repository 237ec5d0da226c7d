import {instruments} from '../instruments/instrument.ts'
import type {Family} from '../instruments/instrument.ts'
import type {Header} from '../musicxml/header.ts'

/** What a part was called, and the family it was written for, as its standard sounds or its name tell. */
export interface Former {
  readonly name: string
  readonly abbreviation: string
  readonly family?: Family
}

/**
 * Reads who a part was for. The catalogue's names are loaded only where no standard sound tells the family, and the
 * family only where somebody asks (`family`).
 */
export async function readFormer(
  header: Header,
  id: string,
  asks: {readonly family: boolean},
): Promise<Former> {
  const part = header.parts.find((each) => each.id === id)
  const {name = '', abbreviation = '', instruments: listed = []} = part ?? {}
  const sounds = listed.flatMap(({sound}) => sound ?? [])
  const family = asks.family
    ? (onlyOne(sounds.map(familyOfSound)) ?? (await familyOfName(name)))
    : undefined
  return {name, abbreviation, ...(family && {family})}
}

/** A sound that the catalogue does not have is of the family of those that it begins like: `wind.reed.oboe.x`. */
function familyOfSound(sound: string): Family | undefined {
  const exact = instruments.find((each) => each.sound === sound)
  if (exact) return exact.family
  const parts = sound.split('.')
  for (let length = parts.length; length > 1; length--) {
    const start = parts.slice(0, length).join('.')
    const alike = instruments.filter((each) => `${each.sound}.`.startsWith(`${start}.`))
    if (alike.length > 0) return onlyOne(alike.map(({family}) => family))
  }
  return undefined
}

async function familyOfName(name: string): Promise<Family | undefined> {
  if (name === '') return undefined
  const {findInstrument} = await import('../instruments/find.ts')
  const search = findInstrument(name)
  if (search.kind === 'none') return undefined
  return search.kind === 'one'
    ? search.found.family
    : onlyOne(search.candidates.map(({family}) => family))
}

function onlyOne(families: readonly (Family | undefined)[]): Family | undefined {
  const [first] = families
  return families.every((each) => each === first) ? first : undefined
}
