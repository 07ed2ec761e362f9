import { describe, expect, it } from 'vitest'
import { decodeText } from './decode-text.ts'

describe('decodeText', () => {
  it('reads UTF-8, with or without a byte order mark', () => {
    expect(decodeText(new TextEncoder().encode('Bäche'), 'a').text).toBe('Bäche')
    expect(decodeText(new Uint8Array([0xef, 0xbb, 0xbf, 0x61]), 'a').text.replace('\uFEFF', '')).toBe('a')
  })

  it('reads UTF-16 as spreadsheets save it', () => {
    expect(decodeText(new Uint8Array([0xff, 0xfe, 0x61, 0, 0xe4, 0]), 'a').text.replace('\uFEFF', '')).toBe(
      'aä',
    )
    expect(decodeText(new Uint8Array([0xfe, 0xff, 0, 0x61]), 'a').text.replace('\uFEFF', '')).toBe('a')
  })

  it('reads Western European text with a warning', () => {
    const { text, faults } = decodeText(new Uint8Array([0x42, 0xe4, 0x63, 0x68, 0x65]), 'a')
    expect(text).toBe('Bäche')
    expect(faults.map((fault) => fault.code)).toEqual(['MAR-IMPORT-030'])
  })
})
