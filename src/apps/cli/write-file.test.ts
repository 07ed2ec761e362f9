import {
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { writeText } from './write-file.ts'

const folder = mkdtempSync(join(tmpdir(), 'marram-write-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('writeText', () => {
  it('writes a new file and takes the place of an old one, and leaves nothing beside it', () => {
    const path = join(folder, 'plan.svg')
    writeText(path, 'first')
    writeText(path, 'second')
    expect(readFileSync(path, 'utf8')).toBe('second')
    expect(readdirSync(folder)).toEqual(['plan.svg'])
  })

  it('writes through a link and leaves the link', () => {
    const target = join(folder, 'target.txt')
    const link = join(folder, 'link.txt')
    writeFileSync(target, 'old')
    symlinkSync(target, link)
    writeText(link, 'new')
    expect(lstatSync(link).isSymbolicLink()).toBe(true)
    expect(readFileSync(target, 'utf8')).toBe('new')
  })

  it('writes into a device instead of taking its place', () => {
    // Through a link of our own, so that a failure of this test would replace the link, not the device.
    const link = join(folder, 'nothing')
    symlinkSync('/dev/null', link)
    writeText(link, 'gone')
    expect(lstatSync(link).isSymbolicLink()).toBe(true)
    expect(readFileSync(link, 'utf8')).toBe('')
  })

  it('says that a folder or a missing folder cannot be written', () => {
    expect(() => writeText(folder, 'x')).toThrow(expect.objectContaining({ code: 'MAR-FILE-006' }))
    expect(() => writeText(join(folder, 'none', 'x'), 'x')).toThrow(
      expect.objectContaining({ code: 'MAR-FILE-006' }),
    )
  })
})
