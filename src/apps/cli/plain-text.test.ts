import { describe, expect, it } from 'vitest'
import { plainText } from './plain-text.ts'

describe('plainText', () => {
  it('takes out what would move the cursor, retitle the window or hide a line', () => {
    expect(plainText('hole \u001b]0;title\u00071', false)).toBe('hole ]0;title1')
    expect(plainText('a\u001b[2Jb\rc\u009bd\u0000', true)).toBe('a[2Jbcd')
  })

  it('keeps line ends, tabs and every other letter', () => {
    expect(plainText('Ünsal\n\tnorth – 7 (14 % “left”)\n[31m', false)).toBe(
      'Ünsal\n\tnorth – 7 (14 % “left”)\n[31m',
    )
  })

  it('keeps colours only where the terminal shows them', () => {
    const bold = '\u001b[1merror\u001b[22m'
    expect(plainText(bold, true)).toBe(bold)
    expect(plainText(bold, false)).toBe('error')
  })
})
