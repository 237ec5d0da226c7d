import fc from 'fast-check'
import {expect, it} from 'vitest'
import {layOut} from '../../lib/sheet/layout.ts'
import type {Shape} from '../../lib/sheet/layout.ts'

const shape: Shape = {columns: 6, newKey: false, fits: true, open: 0}

/** How many measures each of its lines has, when twelve measures are so wide. */
function widths(columns: number): number[] {
  return layOut(Array.from({length: 12}, () => ({...shape, columns})))
    .flatMap(({systems}) => systems)
    .map(({from, to}) => to - from)
}

function measures({from, to}: {readonly from: number; readonly to: number}): number[] {
  return Array.from({length: to - from}, (_, index) => from + index)
}

it('puts a few measures in a line, fewer where they are full', () => {
  expect(widths(2)).toEqual([6, 6])
  expect(widths(6)).toEqual([4, 4, 4])
  expect(widths(12)).toEqual([2, 2, 2, 2, 2, 2])
  expect(widths(90)).toEqual(Array.from({length: 12}, () => 1))
})

it('begins anew where a signature begins, or where the parts part', () => {
  const shapes = [shape, shape, {...shape, newKey: true}, shape, {...shape, fits: false}, shape]
  expect(layOut(shapes).map(({from, to, together}) => [from, to, together])).toEqual([
    [0, 2, true],
    [2, 4, true],
    [4, 5, false],
    [5, 6, true],
  ])
})

it('does not cut a slur if it can wait', () => {
  const open = Array.from({length: 80}, (_, index) => ({...shape, open: index < 40 ? 1 : 0}))
  const [first] = layOut(open)
  expect(first?.systems.length).toBeGreaterThan(8)
  expect(first?.systems.at(-1)?.cuts).toBe(false)
})

it('leaves nothing out and nothing twice', () => {
  const shapes = fc.array(
    fc.record({
      columns: fc.integer({min: 1, max: 60}),
      newKey: fc.boolean(),
      fits: fc.boolean(),
      open: fc.integer({min: 0, max: 2}),
    }),
    {maxLength: 200},
  )
  fc.assert(
    fc.property(shapes, (list) => {
      const chunks = layOut(list)
      const all = list.map((_, index) => index)
      expect(chunks.flatMap(measures)).toEqual(all)
      expect(chunks.flatMap(({systems}) => systems.flatMap(measures))).toEqual(all)
      for (const {from, to, together} of chunks) {
        const own = list.slice(from, to)
        expect(own.every(({fits}) => fits === together)).toBe(true)
        expect(own.slice(1).some(({newKey}) => newKey)).toBe(false)
      }
    }),
  )
})
