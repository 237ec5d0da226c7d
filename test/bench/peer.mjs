// peer.mjs FOLDER IN OUT: a score parsed and printed again by musicxml-io, as installed in that folder.
import {readFileSync, writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {join} from 'node:path'

const [folder, input, output] = process.argv.slice(2)
const {parse, serialize} = createRequire(join(folder, 'package.json'))('musicxml-io')
writeFileSync(output, serialize(parse(readFileSync(input, 'utf8'))))
