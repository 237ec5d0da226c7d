import type {Proof} from './compare.ts'
import {formatProof} from './format.ts'

/** One side of a proof: what it was called, and the SHA-256 of its bytes in hexadecimal. */
export interface CertifiedInput {
  readonly name: string
  readonly sha256: string
}

/** A record of a proof that anybody can repeat: the same inputs and version give the same record, to the letter. */
export interface Certificate {
  readonly format: 'renotate certificate 1'
  readonly version: string
  readonly verdict: Proof['verdict']
  readonly before: CertifiedInput
  readonly after: CertifiedInput
  readonly pairs: Proof['pairs']
  readonly unpaired: Proof['unpaired']
}

/**
 * Records what was compared and what came of it. The checksums are the caller's: whoever reads the files has their
 * bytes at hand. The record holds no date and no place.
 * @throws TypeError when a checksum is no SHA-256.
 */
export function certificate(
  proof: Proof,
  inputs: {readonly before: CertifiedInput; readonly after: CertifiedInput},
  version: string,
): Certificate {
  return {
    format: 'renotate certificate 1',
    version,
    verdict: proof.verdict,
    before: certified(inputs.before),
    after: certified(inputs.after),
    pairs: proof.pairs,
    unpaired: proof.unpaired,
  }
}

/** The record as text for people, with every difference that was kept. */
export function formatCertificate(record: Certificate): string {
  const {format, version, before, after} = record
  return [
    `${format}, made by renotate ${version}`,
    `before: ${before.name}`,
    `        SHA-256 ${before.sha256}`,
    `after:  ${after.name}`,
    `        SHA-256 ${after.sha256}`,
    ...formatProof(record, {limit: Infinity}),
    '',
  ].join('\n')
}

function certified({name, sha256}: CertifiedInput): CertifiedInput {
  if (!/^[0-9a-f]{64}$/i.test(sha256)) throw new TypeError(`${name}: not a SHA-256 checksum`)
  return {name, sha256: sha256.toLowerCase()}
}
