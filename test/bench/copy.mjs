// copy.mjs IN OUT: the least that any rewriter in Node must do, a file read and written in windows of 256 KiB.
import {createReadStream, createWriteStream} from 'node:fs'
import {pipeline} from 'node:stream/promises'

const [input, output] = process.argv.slice(2)
const window = {highWaterMark: 256 * 1024}
await pipeline(createReadStream(input, window), createWriteStream(output, window))
