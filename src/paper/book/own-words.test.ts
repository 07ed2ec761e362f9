import { describe, expect, it } from 'vitest'
import type { OwnSentence } from '#golf/player/own-sentence.ts'
import { rulerOf } from '../draw/ruler.ts'
import type { BookFacts } from './book-facts.ts'
import { CARD_KINDS } from './card-kinds.ts'
import { cardPages } from './card-pages.ts'
import { checkPages } from './check-pages.ts'
import { inventedFacts, inventedHoles } from './invented-book.fixture.ts'
import { adviceOf, changedSentences, ownSentences } from './own-words.ts'

const NEVER = 'Never left: water.'
const sentence = (more: Partial<OwnSentence> = {}): OwnSentence => ({
  course: 'Invented links',
  hole: '2',
  reader: 'player',
  part: 'never',
  words: 'Never at the flag.',
  under: NEVER,
  units: 'yards',
  ...more,
})

function facts(sentences: readonly OwnSentence[], more: Partial<BookFacts> = {}): BookFacts {
  const plain = inventedFacts((text, _face, size) => (text.length * size) / 2, inventedHoles(2), more)
  return { ...plain, player: { ...plain.player, sentences } }
}

/** What the card says of hole 2. */
function second(asked: BookFacts): unknown {
  const [, two] = asked.holes
  return two && adviceOf('player', two, asked)
}

describe('a sentence that a person wrote', () => {
  it('stands in place of the one proposed, and the others stay', () => {
    const proposed = second(facts([]))
    expect(proposed).toMatchObject({ club: '5-wood', never: NEVER })
    expect(second(facts([sentence()]))).toEqual({ ...(proposed as object), never: 'Never at the flag.' })
    expect(second(facts([sentence({ words: '' })]))).toMatchObject({ never: '' })
    const stroke = sentence({ part: 'stroke', club: '7-iron', words: 'at the oak.' })
    expect(second(facts([stroke]))).toMatchObject({ club: '7-iron', stroke: 'at the oak.', never: NEVER })
  })

  it('is of one course, one hole and one reader', () => {
    const others = [sentence({ course: 'Other' }), sentence({ hole: '3' }), sentence({ reader: 'junior' })]
    expect(ownSentences(facts(others), 'player')).toEqual([])
    expect(second(facts(others))).toEqual(second(facts([])))
  })

  it('is pointed out once the plan proposes something else than when it was written', () => {
    expect(changedSentences(facts([sentence()]), 'player')).toEqual([])
    const older = sentence({ under: 'Never right: gorse.' })
    expect(changedSentences(facts([older]), 'player')).toEqual([
      { sentence: older, proposed: NEVER, why: 'plan' },
    ])
  })

  it('says nothing of a hole that is not planned yet, and speaks up where it has no plan', () => {
    const holes = (missing: string) => inventedHoles(2).map((one) => ({ ...one, plan: null, missing }))
    expect(changedSentences(facts([sentence()], { holes: holes('') }), 'player')).toEqual([])
    expect(changedSentences(facts([sentence()], { holes: holes('No green.') }), 'player')).toHaveLength(1)
  })

  it('is pointed out on a page of other units, and not for what a counting round leaves out', () => {
    const under = 'Then 152 to the back, plays 160: 7-iron; rough: 6-iron.'
    const next = sentence({ part: 'next', words: 'Then 150, the 7-iron.', under })
    expect(changedSentences(facts([next]), 'player')).toEqual([])
    expect(changedSentences(facts([next], { purpose: 'counting' }), 'player')).toEqual([])
    const [metres] = changedSentences(facts([next], { ruler: rulerOf('metres') }), 'player')
    expect(metres).toMatchObject({ why: 'units', proposed: expect.stringContaining('139') })
  })
})

describe('the legal check of sentences', () => {
  const faults = (words: string, purpose: BookFacts['purpose'] = 'counting'): unknown[] =>
    checkPages(cardPages(facts([sentence({ words })], { purpose }), CARD_KINDS.card), purpose, [])

  it('reads the club that a person wrote as well', () => {
    const club = sentence({ part: 'stroke', words: 'Start it left.', club: '7-iron, plays 165' })
    const pages = cardPages(facts([club], { purpose: 'counting' }), CARD_KINDS.card)
    expect(checkPages(pages, 'counting', [])).toMatchObject([{ code: 'MAR-BOOK-006' }])
  })

  // Rule 4.3a(1) of the Rules of Golf 2023: no measured height; a playing length is one allowed for it.
  it.each(['Then 150, plays 165.', 'It plays like 165.', 'Playing about 140 here.', '150 yards adjusted.'])(
    'refuses what a length plays: %s',
    (words) => {
      expect(faults(words)).toEqual([
        expect.objectContaining({
          code: 'MAR-BOOK-006',
          place: 'hole 2, never',
          message: expect.stringContaining('4.3a(1)'),
        }),
      ])
      expect(faults(words, 'practice')).toEqual([])
    },
  )

  // Clarification 4.3a/1: notes of a green only by the hand of the player or the caddie.
  it.each([
    'The green falls away behind.',
    'Every putt breaks to the pool.',
    'The green has two tiers.',
    'Green slopes 3 % to the front.',
  ])('refuses how a green slopes: %s', (words) => {
    expect(faults(words)).toEqual([
      expect.objectContaining({
        code: 'MAR-BOOK-007',
        message: expect.stringContaining('Clarification 4.3a/1'),
      }),
    ])
  })

  it.each([
    'Never left: water.',
    'The fairway slopes to the burn: start it 10 right.',
    'Play for the front of the green.',
    'Then 152 to the back: 7-iron; rough: 6-iron.',
    'One in three plays it from the rough.',
  ])('takes what may be prepared before the round: %s', (words) => expect(faults(words)).toEqual([]))

  it('looks at what stands on the page alone', () => {
    const asked = facts([sentence({ words: 'plays 165' })], { purpose: 'counting' })
    expect(checkPages(cardPages(asked, CARD_KINDS.caddie), 'counting', [])).toEqual([])
    expect(checkPages(cardPages(asked, CARD_KINDS.junior), 'counting', [])).toEqual([])
  })
})
