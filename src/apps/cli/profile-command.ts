import { existsSync } from 'node:fs'
import { Failure } from '#faults/failure.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { encodePlayer } from '#golf/player/encode-player.ts'
import { howSure, type SureClub, type SureNumber } from '#golf/player/how-sure.ts'
import { howSureNearGreen } from '#golf/player/how-sure-near-green.ts'
import { playerFromAnswers } from '#golf/player/player-from-answers.ts'
import type { Answers } from '#golf/player/player-questions.ts'
import { documentId } from '#outside/formats/document-id.ts'
import { askQuestions, type Person } from './ask-questions.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { printJson, printLines } from './print-answer.ts'
import { profilePage } from './profile-page.ts'
import { readAnswers } from './read-answers.ts'
import { readText } from './read-file.ts'
import { withTerminalPerson } from './terminal-person.ts'
import { parseUnits, type ReaderUnits } from './units-of-the-reader.ts'
import { writeText } from './write-file.ts'

/** The options of `marram profile`. */
export interface ProfileOptions extends GlobalOptions {
  readonly out?: string
  readonly answers?: string
}

/** `marram profile`: a first profile of a player from ten questions, and how sure it is. Returns the exit code. */
export async function profileCommand(options: ProfileOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const { answers, out } =
    options.answers === undefined
      ? await askedAnswers(options.out, units, machine)
      : { answers: readAnswers(readText(options.answers), options.answers), out: options.out }
  const { file, faults } = playerFromAnswers(answers, units)
  if (file === null) {
    const [first, ...others] = faults
    const places = others.map(({ place }) => place).join(', ')
    const more = places === '' ? '' : ` Also to be put right: ${places}.`
    const where = [options.answers, first?.place].filter((part) => part !== undefined).join(': ')
    throw new Failure(
      first?.code ?? 'MAR-ANSWER-010',
      `${first?.message ?? ''} ${first?.advice ?? ''}${more}`.trim(),
      where,
    )
  }
  const player = completePlayer(file)
  const text = encodePlayer(player)
  if (out !== undefined) writeText(out, text)
  const clubs = howSure(player)
  const nearGreen = howSureNearGreen(player)
  if (options.json)
    printJson(
      {
        schema: 'profile/1',
        out: out ?? null,
        player: JSON.parse(text),
        clubs: clubs.map(clubDocument),
        nearGreen: {
          up_and_down_share: nearGreen.upAndDownShare,
          half_holed_m: nearGreen.halfHoledMetres,
        },
      },
      machine,
    )
  else
    printLines(
      [
        ...(options.quiet ? [] : [...profilePage(player, clubs, nearGreen, units), '']),
        out === undefined ? 'Nothing was written: --out FILE keeps the player.' : `Written: ${out}`,
      ],
      machine,
    )
  return 0
}

/** A club's numbers with their ranges, by their names in the player file; `sideways_sd_m` is at the club's carry. */
function clubDocument({ name, carryMetres, spreadMetres, mishitShare }: SureClub): object {
  const number = ({ value, low, high, then, isGuess }: SureNumber): object => ({
    ...{ value, low, high, guess: isGuess, after_ten_shots: then },
  })
  return {
    name,
    carry_m: number(carryMetres),
    sideways_sd_m: number(spreadMetres),
    mishit_share: number(mishitShare),
  }
}

async function askedAnswers(
  out: string | undefined,
  units: ReaderUnits,
  machine: Machine,
): Promise<{ answers: Answers; out: string | undefined }> {
  if (!machine.canAsk)
    throw new Failure(
      'MAR-ANSWER-011',
      'There is no terminal to ask the questions on. Give the answers in a file: --answers FILE.json.',
    )
  return withTerminalPerson(async (person) => {
    const answers = await askQuestions(person, units)
    return { answers, out: out ?? (await askFile(answers.name ?? '', person)) }
  })
}

/** Where to keep the player: a new file by the name, another, or none. */
async function askFile(name: string, person: Person): Promise<string | undefined> {
  const usual = freeFile(name)
  const line = await person.ask(`\n   Keep the player in which file? Empty: ${usual}, -: none. `)
  if (line === null)
    throw new Failure('MAR-ANSWER-012', 'The questions were broken off; nothing was written.')
  const text = line.trim()
  return text === '-' ? undefined : text === '' ? usual : text
}

/** A file name that is not taken: `wren.player.json`, else `wren-2.player.json`. */
function freeFile(name: string): string {
  const base = documentId(name, 'player')
  for (let count = 1; ; count += 1) {
    const file = `${base}${count === 1 ? '' : `-${count}`}.player.json`
    if (!existsSync(file)) return file
  }
}
