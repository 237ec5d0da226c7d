import {existsSync, readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

/** A folder of `fixtures/<topic>/<case>/` with its input. */
export interface Fixture {
  /** `<topic>/<case>`. */
  readonly name: string
  readonly folder: string
  readonly input: Uint8Array
}

const root = fileURLToPath(new URL('../../fixtures', import.meta.url))

/** Every fixture, in the order of their names. */
export function fixtures(): readonly Fixture[] {
  return readdirSync(root, {withFileTypes: true})
    .filter((topic) => topic.isDirectory())
    .flatMap((topic) =>
      readdirSync(join(root, topic.name), {withFileTypes: true}).map((each) =>
        join(topic.name, each.name),
      ),
    )
    .map((name) => ({name: name.replaceAll('\\', '/'), folder: join(root, name)}))
    .filter(({folder}) => existsSync(join(folder, 'input.musicxml')))
    .map((each) => ({...each, input: readBytes(join(each.folder, 'input.musicxml'))}))
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
}

/** The demonstration score, the one fixture that is a whole piece. */
export function demoScore(): Uint8Array {
  return readBytes(join(root, 'demo', 'score.musicxml'))
}

function readBytes(path: string): Uint8Array {
  return new Uint8Array(readFileSync(path))
}
