import { describe, expect, it } from 'vitest'
import { readAnswers } from './read-answers.ts'

const refusal = (text: string): unknown => {
  try {
    return readAnswers(text, 'a.json')
  } catch (error) {
    return error
  }
}

describe('readAnswers', () => {
  it('takes texts, numbers, lists and clubs with their carries; null is not known', () => {
    const text = `\uFEFF{"name": "Wren", "age": 12, "sex": null, "bag": ["driver", "7i"], "carries": {"7i": 95, "sw": "48 m"}}`
    expect(readAnswers(text, 'a.json')).toEqual({
      name: 'Wren',
      age: '12',
      sex: '',
      bag: 'driver, 7i',
      carries: '7i 95, sw 48 m',
    })
  })

  it.each([
    ['{', /not JSON/, 'a.json'],
    ['[]', /not one object/, 'a.json'],
    ['null', /not one object/, 'a.json'],
    ['{"handicap": 9}', /"handicap" is not asked/, 'a.json: handicap'],
    ['{"shape": true}', /a text, a number/, 'a.json: shape'],
    ['{"bag": [7]}', /a text, a number/, 'a.json: bag'],
    ['{"carries": {"7i": [95]}}', /a text, a number/, 'a.json: carries'],
  ])('refuses %s', (text, message, where) => {
    expect(refusal(text)).toMatchObject({
      code: 'MAR-ANSWER-010',
      message: expect.stringMatching(message),
      where,
    })
  })
})
