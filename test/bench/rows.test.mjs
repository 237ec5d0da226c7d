import {describe, expect, it} from 'vitest'
import {commandsOf, ratio, roundsFor, rows, verdict} from './rows.mjs'

const costs = new Map([
  ['node', {wall: 0.1, cpu: 0.1, peak: 40}],
  ['start', {wall: 0.2, cpu: 0.2, peak: 45}],
  ['part ten', {wall: 0.5, cpu: 0.6, peak: 60}],
  ['part hundred', {wall: 4, cpu: 4.2, peak: 80}],
])
const megabytes = new Map([
  ['part ten', 10],
  ['part hundred', 100],
])

describe('the rows of the bench', () => {
  it('compare what two commands cost', () => {
    expect(ratio({cost: 'wall', of: 'part ten', to: 'node'}, costs, megabytes)).toBeCloseTo(5)
    expect(ratio({cost: 'peak', of: 'part ten', to: 'node'}, costs, megabytes)).toBeCloseTo(1.5)
  })

  it('compare what a megabyte costs once the start-up is taken off', () => {
    const row = {cost: 'cpu', of: 'part hundred', to: 'part ten', less: 'start'}
    expect(ratio(row, costs, megabytes)).toBeCloseTo(4 / 100 / (0.4 / 10))
  })

  it('are judged by their own goals', () => {
    const row = {goal: 3, excellent: 1.5}
    expect([1.5, 1.6, 3, 3.1].map((each) => verdict(row, each))).toEqual([
      'excellent',
      'good',
      'good',
      'MISSED',
    ])
    expect(verdict({}, 7)).toBe('')
  })

  it('run large inputs less often', () => {
    expect(roundsFor('part giga', 5)).toBe(1)
    expect(roundsFor('xslt hundred', 5)).toBe(2)
    expect(roundsFor('part hundred', 5)).toBe(5)
  })

  it('have names and commands of their own, and a goal that is the easier one', () => {
    expect(new Set(rows.map(({name}) => name)).size).toBe(rows.length)
    for (const row of rows) {
      expect(new Set(commandsOf(row)).size, row.name).toBe(commandsOf(row).length)
      if (row.goal !== undefined) expect(row.excellent, row.name).toBeLessThan(row.goal)
    }
  })
})
