// What is measured, and what is good enough. A command is a tool and an input; a row is a ratio of what two
// commands cost, so that it says the same on a fast machine and on a slow one.

/**
 * `cost` is wall, cpu or peak. With `less`, that command's cost is first taken from both (start-up), and what
 * remains is divided by the megabytes of its input. `goal` must be met, `excellent` is worth the work.
 */
export const rows = [
  {
    name: 'one-megabyte',
    says: '1 MB, one part: wall / bare node',
    cost: 'wall',
    of: 'part one',
    to: 'node',
    goal: 2.5,
    excellent: 1.8,
  },
  {
    name: 'symphony',
    says: 'a real symphony movement of 10 MB, one part: wall / bare node',
    cost: 'wall',
    of: 'part symphony',
    to: 'node',
    goal: 6,
    excellent: 3.5,
  },
  {
    name: 'symphony-xslt',
    says: 'the same: wall / XSLT (which moves all parts)',
    cost: 'wall',
    of: 'part symphony',
    to: 'xslt symphony',
    goal: 0.4,
    excellent: 0.25,
  },
  {
    name: 'one-of-24',
    says: '100 MB, one part of 24: cpu / expat in C, which only reads',
    cost: 'cpu',
    of: 'part hundred',
    to: 'expat hundred',
    goal: 3,
    excellent: 1.2,
  },
  {
    name: 'all-24',
    says: '100 MB, all 24 parts to files: cpu / expat in C, which only reads',
    cost: 'cpu',
    of: 'parts hundred',
    to: 'expat hundred',
    goal: 4,
    excellent: 2.5,
  },
  {
    name: 'all-24-peer',
    says: 'the same: cpu / musicxml-io, parse and serialise',
    cost: 'cpu',
    of: 'parts hundred',
    to: 'peer hundred',
    goal: 0.35,
    excellent: 0.2,
  },
  {
    name: 'concert-copy',
    says: '10 MB, all parts at concert pitch: cpu / a copy by node',
    cost: 'cpu',
    of: 'concert ten',
    to: 'copy ten',
  },
  {
    name: 'timewise',
    says: '10 MB, all parts at concert pitch: cpu, timewise / partwise',
    cost: 'cpu',
    of: 'concert timewise',
    to: 'concert ten',
    goal: 1.4,
    excellent: 1.15,
  },
  {
    name: 'mxl',
    says: '10 MB, one part: cpu, .mxl / .musicxml',
    cost: 'cpu',
    of: 'part mxl',
    to: 'part ten',
    goal: 1.4,
    excellent: 1.2,
  },
  {
    name: 'memory-node',
    says: '10 MB, one part: peak memory / bare node',
    cost: 'peak',
    of: 'part ten',
    to: 'node',
    goal: 2.2,
    excellent: 1.6,
  },
  {
    name: 'memory-growth',
    says: 'one part: peak memory, 1 GB / 10 MB',
    cost: 'peak',
    of: 'part giga',
    to: 'part ten',
    goal: 1.6,
    excellent: 1.25,
  },
  {
    name: 'memory-xslt',
    says: '100 MB, all parts at concert pitch: peak memory / XSLT',
    cost: 'peak',
    of: 'concert hundred',
    to: 'xslt hundred',
    goal: 0.06,
    excellent: 0.04,
  },
  {
    name: 'linear',
    says: 'one part: cpu a megabyte less start-up, 100 MB / 10 MB',
    cost: 'cpu',
    of: 'part hundred',
    to: 'part ten',
    less: 'start',
    goal: 1.1,
    excellent: 1,
  },
  {
    name: 'linear-giga',
    says: 'one part: cpu a megabyte less start-up, 1 GB / 100 MB',
    cost: 'cpu',
    of: 'part giga',
    to: 'part hundred',
    less: 'start',
    goal: 1.1,
    excellent: 1,
  },
  {
    name: 'short-measures',
    says: '10 MB, all at concert pitch: cpu a megabyte less start-up, measures of 1 KB / 6 KB',
    cost: 'cpu',
    of: 'concert short',
    to: 'concert ten',
    less: 'start',
    goal: 1.5,
    excellent: 1.2,
  },
]

/** The commands that a row needs. */
export function commandsOf({of, to, less}) {
  return [of, to, ...(less === undefined ? [] : [less])]
}

/** What a row comes to, from the costs and the megabytes of its commands. */
export function ratio({of, to, less, cost}, costs, megabytes) {
  if (less === undefined) return costs.get(of)[cost] / costs.get(to)[cost]
  const start = costs.get(less)[cost]
  const each = (command) => (costs.get(command)[cost] - start) / megabytes.get(command)
  return each(of) / each(to)
}

/** How a ratio compares with the row's goals. */
export function verdict({goal, excellent}, measured) {
  if (goal === undefined) return ''
  if (measured <= excellent) return 'excellent'
  return measured <= goal ? 'good' : 'MISSED'
}

/** Large inputs are run less often: once for a gigabyte, at most twice for what takes long. */
export function roundsFor(command, rounds) {
  if (command.endsWith('giga')) return 1
  return /^(peer|xslt) hundred$/.test(command) ? Math.min(2, rounds) : rounds
}
