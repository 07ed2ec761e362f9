import { expect, it } from 'vitest'
import { type Entry, findEntries } from './find-entries.ts'

const entry = (name: string, kind: string): Entry => ({ name, kind, go: () => {} })
const ENTRIES = [
  entry('17 Gull Rise', 'hole of Sandrel Ness'),
  entry('7 Heron’s Larder', 'hole of Sandrel Ness'),
  entry('Ysolde Marrin', 'player'),
  entry('Sandrel Ness', 'course'),
  entry('The next hole', 'command'),
  entry('Brún Hólm', 'course'),
]
const found = (typed: string): readonly string[] => findEntries(ENTRIES, typed).map(({ name }) => name)

it('finds by number, by the beginnings of words, in any order and without marks', () => {
  expect(found('7')).toEqual(['7 Heron’s Larder'])
  expect(found('lard her')).toEqual(['7 Heron’s Larder'])
  expect(found('MARR')).toEqual(['Ysolde Marrin'])
  expect(found('brun')).toEqual(['Brún Hólm'])
})

it('puts names before kinds and whole words before beginnings', () => {
  expect(found('sandrel')[0]).toBe('Sandrel Ness')
  expect(found('hole')[0]).toBe('The next hole')
  expect(found('player')).toEqual(['Ysolde Marrin'])
})

it('finds nothing for nothing, nor where one word is not there', () => {
  expect(found('  ')).toEqual([])
  expect(found('heron player')).toEqual([])
})
