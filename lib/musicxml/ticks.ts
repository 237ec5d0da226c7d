import {child, childNumber, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'

/**
 * The smallest whole number of ticks a quarter in which every duration of the measure is whole. Divisions and durations may be
 * decimal by the schema; nearly none are, so that `decimals` says whether to look for them.
 */
export function ticksPerQuarter(
  text: string,
  root: Element,
  divisions: number,
  options: {readonly decimals?: boolean} = {},
): number {
  const inForce = [divisions]
  let decimals = 0
  for (const each of root.children) {
    if (each.name === 'attributes') {
      const stated = childNumber(text, each, 'divisions')
      if (stated !== undefined && stated > 0) inForce.push(stated)
    }
  }
  if (inForce.length === 1 && !options.decimals && Number.isInteger(divisions)) return divisions
  if (options.decimals) {
    for (const each of root.children) {
      const raw = each.name === 'attributes' ? child(each, 'divisions') : child(each, 'duration')
      const point = raw ? /\.(\d*?)0*$/.exec(textOf(text, raw)) : undefined
      decimals = Math.max(decimals, Math.min(6, point?.[1]?.length ?? 0))
    }
  }
  for (const each of inForce) {
    if (!Number.isInteger(each))
      decimals = Math.max(decimals, Math.min(6, String(each).split('.')[1]?.length ?? 0))
  }
  const scale = 10 ** decimals
  return (
    inForce.map((each) => Math.max(1, Math.round(each * scale))).reduce(leastCommonMultiple) *
    (decimals > 0 ? scale : 1)
  )
}

/** A number of divisions in ticks; whole, unless the divisions are decimal beyond what `ticks` was made for. */
export function ticksOf(divisions: number, scale: number): number {
  const ticks = divisions * scale
  const rounded = Math.round(ticks)
  // Thirds of a decimal division are never exact in binary: what is that near to whole is whole.
  return Math.abs(ticks - rounded) < 1e-6 ? rounded : ticks
}

function leastCommonMultiple(a: number, b: number): number {
  return (a / greatestCommonDivisor(a, b)) * b
}

export function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
