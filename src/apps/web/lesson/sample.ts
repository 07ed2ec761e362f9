/** The hole and the player of the first lesson, as they are put into an empty store. */
export const SAMPLE = { courseId: 'sandrel-ness', holeRef: '7', playerId: 'aldous-brack' } as const
