import { describe, expect, it } from 'vitest'
import type { OwnSentence } from '#golf/player/own-sentence.ts'
import { textWith } from './kept-sentences.ts'

const sentence = (hole: string, words: string): OwnSentence => ({
  course: 'Links',
  hole,
  reader: 'player',
  part: 'never',
  words,
  under: '',
  units: 'yards',
})
const file = (sentences?: readonly OwnSentence[]): string =>
  JSON.stringify({ schema: 'player/1', name: 'Ida', hand: 'left', handicapIndex: 20, sentences })
const kept = (text: string): readonly OwnSentence[] | undefined => JSON.parse(text).sentences

describe('textWith', () => {
  it('puts a sentence into a file that had none, and leaves the rest as it is', () => {
    const one = sentence('1', 'Never left.')
    const text = textWith(file(), [], [one])
    expect(JSON.parse(text)).toEqual({ ...JSON.parse(file()), sentences: [one] })
  })

  it('changes and takes away only what was changed here, whatever another desk wrote since', () => {
    const [one, two, theirs] = [sentence('1', 'a'), sentence('2', 'b'), sentence('3', 'theirs')]
    const changed = sentence('1', 'a, but better')
    const text = textWith(file([one, two, theirs]), [one, two], [changed])
    expect(kept(text)).toEqual([theirs, changed])
  })

  it('leaves no empty list behind', () => {
    const one = sentence('1', 'a')
    expect(kept(textWith(file([one]), [one], []))).toBeUndefined()
  })
})
