import {child, childNumber, textOf} from '../xml/element.ts'
import type {Element} from '../xml/element.ts'

/** The smallest whole number of ticks a quarter in which every duration of the measure is whole. */
export function ticksPerQuarter(text: string, root: Element, divisions: number): number {
  const inForce = [divisions]
  let decimals = 0
  for (const each of root.children) {
    if (each.name === 'attributes') {
      const stated = childNumber(text, each, 'divisions')
      if (stated !== undefined && stated > 0) inForce.push(stated)
    }
  }
  // Durations and divisions may be decimal by the schema; nearly none are.
  if (text.includes('.')) {
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

function leastCommonMultiple(a: number, b: number): number {
  return (a / greatestCommonDivisor(a, b)) * b
}

export function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
