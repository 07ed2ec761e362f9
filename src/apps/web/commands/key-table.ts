/** Keys that do one thing, and what that is. */
export interface KeyRow {
  /**
   * As the browser names them: `a` and `?` are typed, `Enter` is named; `ctrl+` and `shift+` before them. Control is the
   * command key where there is one. Named keys take the shift key as they like unless a row asks for it.
   */
  readonly keys: readonly string[]
  readonly words: string
}

/** Where keys are taken: the whole page, or the thing that has the focus. */
export interface KeyPlace {
  readonly words: string
  readonly rows: Readonly<Record<string, KeyRow>>
}

/** Every key there is. What binds keys asks this table, and the list that is shown is this table. */
export const KEY_TABLE = {
  page: {
    words: 'Anywhere',
    rows: {
      find: { keys: ['/'], words: 'Find a hole, a player, a course or a command' },
      keys: { keys: ['?'], words: 'This list of keys' },
      undo: { keys: ['ctrl+z'], words: 'One step back' },
      redo: { keys: ['ctrl+shift+z', 'ctrl+y'], words: 'One step forth again' },
      print: { keys: ['ctrl+p'], words: 'Print' },
    },
  },
  desk: {
    words: 'On the hole desk',
    rows: {
      nextHole: { keys: ['n'], words: 'The next hole' },
      holeBefore: { keys: ['b'], words: 'The hole before' },
      toAim: { keys: ['a'], words: 'To the aim on the chart' },
      lesson: { keys: ['l'], words: 'The first lesson, out or away' },
      nearer: { keys: ['+'], words: 'The chart nearer' },
      awayFrom: { keys: ['-'], words: 'The chart further away' },
      wholeHole: { keys: ['0'], words: 'The whole hole on the chart' },
      measure: { keys: ['m'], words: 'Measure between two places' },
      scores: { keys: ['s'], words: 'Expected scores over the hole' },
      wall: { keys: ['w'], words: 'The plan on the wall' },
    },
  },
  wall: {
    words: 'On the wall',
    rows: {
      on: { keys: ['ArrowRight', 'PageDown', ' '], words: 'The next picture' },
      back: { keys: ['ArrowLeft', 'PageUp'], words: 'The picture before' },
      first: { keys: ['Home'], words: 'The first picture' },
      last: { keys: ['End'], words: 'The last picture' },
    },
  },
  find: {
    words: 'Where something is found',
    rows: {
      below: { keys: ['ArrowDown'], words: 'The one below' },
      above: { keys: ['ArrowUp'], words: 'The one above' },
      go: { keys: ['Enter'], words: 'Go there, or do it' },
    },
  },
  aim: {
    words: 'On the aim',
    rows: {
      left: { keys: ['ArrowLeft', 'ArrowDown'], words: 'A step to the left' },
      right: { keys: ['ArrowRight', 'ArrowUp'], words: 'A step to the right' },
      farLeft: { keys: ['PageDown'], words: 'Five steps to the left' },
      farRight: { keys: ['PageUp'], words: 'Five steps to the right' },
      best: { keys: ['Home'], words: 'Back to the best line' },
    },
  },
  handle: {
    words: 'On ball, pin, hazard or an end of a distance',
    rows: {
      left: { keys: ['ArrowLeft'], words: 'A step to the left' },
      right: { keys: ['ArrowRight'], words: 'A step to the right' },
      further: { keys: ['ArrowUp'], words: 'A step on' },
      back: { keys: ['ArrowDown'], words: 'A step back' },
    },
  },
  carries: {
    words: 'In the table of carries',
    rows: {
      next: { keys: ['Enter', 'ArrowDown'], words: 'The next club' },
      before: { keys: ['shift+Enter', 'ArrowUp'], words: 'The club before' },
    },
  },
  shots: {
    words: 'On the chart of shots',
    rows: {
      left: { keys: ['ArrowLeft'], words: 'The cross to the left; with shift a fine step' },
      right: { keys: ['ArrowRight'], words: 'The cross to the right; with shift a fine step' },
      further: { keys: ['ArrowUp'], words: 'The cross on; with shift a fine step' },
      back: { keys: ['ArrowDown'], words: 'The cross back; with shift a fine step' },
      put: { keys: ['Enter', ' '], words: 'Put a shot down' },
      takeBack: { keys: ['Backspace', 'Delete'], words: 'Take the last step back' },
    },
  },
  trace: {
    words: 'On the chart of a survey',
    rows: {
      left: { keys: ['ArrowLeft'], words: 'The cross to the left; with shift a fine step' },
      right: { keys: ['ArrowRight'], words: 'The cross to the right; with shift a fine step' },
      further: { keys: ['ArrowUp'], words: 'The cross on; with shift a fine step' },
      back: { keys: ['ArrowDown'], words: 'The cross back; with shift a fine step' },
      put: { keys: [' '], words: 'Put a corner down' },
      close: { keys: ['Enter'], words: 'Close the outline' },
      takeBack: { keys: ['Backspace'], words: 'Take the last step back' },
      drop: { keys: ['Escape'], words: 'Give the outline up' },
    },
  },
  map: {
    words: 'On the map of a survey',
    rows: {
      left: { keys: ['ArrowLeft'], words: 'The cross to the left; with shift a fine step' },
      right: { keys: ['ArrowRight'], words: 'The cross to the right; with shift a fine step' },
      up: { keys: ['ArrowUp'], words: 'The cross to the north; with shift a fine step' },
      down: { keys: ['ArrowDown'], words: 'The cross to the south; with shift a fine step' },
      put: { keys: [' ', 'Enter'], words: 'The place under the cross' },
      takeBack: { keys: ['Backspace'], words: 'Take the last step back' },
      leave: { keys: ['Escape'], words: 'Leave the map' },
    },
  },
  rows: {
    words: 'In the table of a survey',
    rows: {
      nextRow: { keys: ['Enter'], words: 'The next row' },
      rowBefore: { keys: ['shift+Enter'], words: 'The row before' },
      below: { keys: ['ArrowDown'], words: 'The cell below' },
      above: { keys: ['ArrowUp'], words: 'The cell above' },
    },
  },
} as const

export type PlaceName = keyof typeof KEY_TABLE
/** What keys of a place do. */
export type KeyName<Place extends PlaceName> = keyof (typeof KEY_TABLE)[Place]['rows']
/** What can be told to the page as a whole. */
export type CommandName = KeyName<'page'> | KeyName<'desk'>
