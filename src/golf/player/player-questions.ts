import type { Said } from './said.ts'

/** The fields of the ten questions, in the order they are asked. Answers go by these names. */
export type FieldId =
  | 'age'
  | 'name'
  | 'sex'
  | 'hand'
  | 'handicapIndex'
  | 'usualScore'
  | 'bag'
  | 'carries'
  | 'shape'
  | 'bigMiss'
  | 'mishits'
  | 'upAndDown'
  | 'halfHoled'

/** Answers as a person typed or chose them; a field that is absent or blank is not known. */
export type Answers = Readonly<Partial<Record<FieldId, string>>>

/** One of several answers: what is kept, and the words for it. */
export interface AnswerChoice {
  readonly value: string
  readonly words: string
}

/** One thing to answer. */
export interface Field {
  readonly id: FieldId
  /** What is asked, as a sentence. */
  readonly ask: string
  /** Why it is asked, how to answer, and what is taken for granted without an answer. */
  readonly help: string
  readonly kind: 'name' | 'number' | 'choice' | 'clubs' | 'carries'
  /** Of a choice. */
  readonly choices?: readonly AnswerChoice[]
  /** Of a number: its range and unit. */
  readonly range?: readonly [least: number, most: number]
  readonly unit?: 'years' | 'strokes'
  /** True when no player can be made without an answer. */
  readonly isNeeded?: true
}

/** One of the ten: a title and what belongs to it. */
export interface Question {
  readonly title: string
  readonly fields: readonly Field[]
}

/**
 * The ten questions that make a first profile of a player, asked in this order by the command line and the page alike.
 * Shares and lengths behind the words are counts that a person can see on a course, not marks.
 */
export const QUESTIONS: readonly Question[] = [
  {
    title: 'Who',
    fields: [
      {
        id: 'age',
        ask: 'How old is the player?',
        help: 'Whole years. It matters under 18: the clubs expected of a junior are shorter, and a minor is kept by first name only. Without an answer a grown-up is taken.',
        kind: 'number',
        range: [3, 110],
        unit: 'years',
      },
      {
        id: 'name',
        ask: 'What is the player called?',
        help: 'As it shall stand on pages. Under 18 a first name only. It stays on this machine.',
        kind: 'name',
        isNeeded: true,
      },
      {
        id: 'sex',
        ask: 'A man or a woman?',
        help: 'The published lengths and spreads by handicap index are of men and of women. Unstated, three parts of the men’s and one of the women’s are taken.',
        kind: 'choice',
        choices: [
          { value: 'male', words: 'man or boy' },
          { value: 'female', words: 'woman or girl' },
        ],
      },
    ],
  },
  {
    title: 'Hand',
    fields: [
      {
        id: 'hand',
        ask: 'Which way does the player stand to the ball?',
        help: 'A left-hander’s draw bends to the right; everything is mirrored.',
        kind: 'choice',
        choices: [
          { value: 'right', words: 'right-handed' },
          { value: 'left', words: 'left-handed' },
        ],
        isNeeded: true,
      },
    ],
  },
  {
    title: 'Level',
    fields: [
      {
        id: 'handicapIndex',
        ask: 'What is the handicap index?',
        help: 'Such as 17.6; a plus player writes −2 or +2. Without one, the usual score is asked.',
        kind: 'number',
        range: [-10, 54],
        unit: 'strokes',
      },
      {
        id: 'usualScore',
        ask: 'Without an index: what is a usual score over 18 holes?',
        help: 'All strokes of a usual round from the usual tees, par about 72. The index is taken as the score less 75: less a rating of 72, and 3 strokes by which the rounds that count are better than a usual one.',
        kind: 'number',
        range: [55, 200],
        unit: 'strokes',
      },
    ],
  },
  {
    title: 'Bag',
    fields: [
      {
        id: 'bag',
        ask: 'Which clubs are in the bag?',
        help: 'Commas between them, the putter left out: driver, 3w, 5 wood, 4h, 6i-PW, 52, SW. Without an answer a likely bag is filled in.',
        kind: 'clubs',
      },
    ],
  },
  {
    title: 'Carries',
    fields: [
      {
        id: 'carries',
        ask: 'Two or three carries that are known well?',
        help: 'How far a good strike flies until it comes down, without the run: driver 205, 7i 138. A long, a middle and a short club say most; the rest is filled in between. A unit may follow: 7i 126 m.',
        kind: 'carries',
      },
    ],
  },
  {
    title: 'Shape',
    fields: [
      {
        id: 'shape',
        ask: 'How does the usual full shot bend?',
        help: 'For a right-hander a draw bends to the left and a fade to the right; for a left-hander the other way. Taken as straight without an answer.',
        kind: 'choice',
        choices: [
          { value: 'hook', words: 'hook: a lot, with the driver some 10 in 100' },
          { value: 'draw', words: 'draw: some 5 in 100' },
          { value: 'straight', words: 'straight' },
          { value: 'fade', words: 'fade: some 5 in 100' },
          { value: 'slice', words: 'slice: a lot, some 10 in 100' },
        ] satisfies readonly { value: NonNullable<Said['shape']>; words: string }[],
      },
    ],
  },
  {
    title: 'Big miss',
    fields: [
      {
        id: 'bigMiss',
        ask: 'Where does the bad full shot go?',
        help: 'As the player sees it from behind the ball. Short: fat, thin or topped.',
        kind: 'choice',
        choices: [
          { value: 'left', words: 'left' },
          { value: 'right', words: 'right' },
          { value: 'short', words: 'short' },
          { value: 'none', words: 'no side more than the other' },
        ] satisfies readonly { value: NonNullable<Said['big_miss']>; words: string }[],
      },
    ],
  },
  {
    title: 'Mishits',
    fields: [
      {
        id: 'mishits',
        ask: 'How often is a full shot mishit?',
        help: 'Fat, thin, topped or off the edge of the club, so that it comes up well short. Between this and what the level lets expect, the middle is taken: nobody counts them.',
        kind: 'choice',
        choices: [
          { value: '0.03', words: 'hardly ever' },
          { value: '0.1', words: 'one in ten' },
          { value: '0.167', words: 'one in six' },
          { value: '0.25', words: 'one in four' },
          { value: '0.333', words: 'every third' },
        ],
      },
    ],
  },
  {
    title: 'Short game',
    fields: [
      {
        id: 'upAndDown',
        ask: 'Ten balls on short grass, 22 yd (20 m) from the hole: how many are holed in two?',
        help: 'A chip or pitch and one putt. The middle between this and the level is taken.',
        kind: 'choice',
        choices: [
          { value: '0.05', words: 'one at most: the chip itself is a worry' },
          { value: '0.15', words: 'one or two: on the green, then two putts' },
          { value: '0.25', words: 'two or three: now and then close' },
          { value: '0.35', words: 'three or four: mostly a putt for it' },
          { value: '0.5', words: 'five or more: a strength' },
        ],
      },
    ],
  },
  {
    title: 'Putting',
    fields: [
      {
        id: 'halfHoled',
        ask: 'From how far does every second putt go in?',
        help: 'On a fairly flat green. The middle between this and the level is taken.',
        kind: 'choice',
        choices: [
          { value: '0.9', words: '3 ft (0.9 m): short ones are missed' },
          { value: '1.2', words: '4 ft (1.2 m)' },
          { value: '1.5', words: '5 ft (1.5 m)' },
          { value: '1.8', words: '6 ft (1.8 m)' },
          { value: '2.1', words: '7 ft (2.1 m)' },
          { value: '2.4', words: '8 ft (2.4 m) or more: like a tour player' },
        ],
      },
    ],
  },
]

/** Every field in the order it is asked. */
export const FIELDS: readonly Field[] = QUESTIONS.flatMap(({ fields }) => fields)

/** Whether a field is asked in view of the other answers: a usual score only of those without an index. */
export function isAsked(field: Field, answers: Answers): boolean {
  return field.id !== 'usualScore' || (answers.handicapIndex ?? '').trim() === ''
}
