import type { Fault } from '#faults/fault.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'

/** What became of a table: the shots that are new on the sheet, and what to say. */
export interface OpenedShots {
  readonly found: readonly ShotRecord[]
  readonly words: string
  readonly faults: readonly Fault[]
}

/**
 * Reads a table of shots from the disk; `columns` says what they are where the table does not. A table whose shots all
 * stand on the sheet already adds none. Throws a Failure when its columns are not clear.
 */
export async function openShots(
  file: Pick<File, 'name' | 'arrayBuffer'>,
  columns: string,
  sheet: readonly ShotRecord[],
): Promise<OpenedShots> {
  // Most people never open one: the reader comes when it is asked for.
  const [{ readMapping, readShotTables }, { decodeText }] = await Promise.all([
    import('#outside/formats/shot-table.ts'),
    import('#outside/formats/decode-text.ts'),
  ])
  const decoded = decodeText(new Uint8Array(await file.arrayBuffer()), file.name)
  const mapping = columns.trim() === '' ? null : readMapping(columns.trim())
  const { shots, rows, repeated, setAside, unread, faults } = readShotTables(
    [{ text: decoded.text, name: file.name }],
    mapping,
  )
  const told = { faults: [...decoded.faults, ...faults] }
  if (shots.length > 0 && standOn(sheet, shots))
    return {
      ...told,
      found: [],
      words: `All ${shots.length} shots of ${file.name} stand on the sheet already; none was added.`,
    }
  const left = [
    [unread, 'not read'],
    [repeated, 'written twice and counted once'],
    [setAside, 'set aside as no full shots'],
  ] as const
  const rest = left.filter(([count]) => count > 0).map(([count, what]) => `, ${count} ${what}`)
  return {
    ...told,
    found: shots,
    words: `${file.name}: ${shots.length} of ${rows} rows put down${rest.join('')}.`,
  }
}

/** Whether every shot stands on the sheet at least as often. */
function standOn(sheet: readonly ShotRecord[], shots: readonly ShotRecord[]): boolean {
  const counts = new Map<string, number>()
  for (const shot of sheet) counts.set(keyOf(shot), (counts.get(keyOf(shot)) ?? 0) + 1)
  return shots.every((shot) => {
    const left = (counts.get(keyOf(shot)) ?? 0) - 1
    counts.set(keyOf(shot), left)
    return left >= 0
  })
}

function keyOf({ date, club, lie, carryMetres, totalMetres, offlineMetres, strike }: ShotRecord): string {
  const lengths = [carryMetres, totalMetres, offlineMetres].map((metres) => metres?.toFixed(2) ?? '')
  return [date, club, lie, ...lengths, strike].join('|')
}
