import type { ReactElement } from 'react'
import { clubWords } from '#golf/player/club-words.ts'
import type { SureClub, SureNumber } from '#golf/player/how-sure.ts'
import type { Reader } from '../desk/desk.ts'
import { figure, unbroken, unitSign } from '../words.ts'

/** Every club with its numbers, the range in which they lie, and the range after ten shots. */
export function ProfileTable(props: {
  readonly clubs: readonly SureClub[]
  readonly reader: Reader
}): ReactElement {
  const { clubs, reader } = props
  const length = (metres: number): string => figure(metres, reader)
  const percent = (share: number): string => Math.round(100 * share).toString()
  return (
    <table className="profile-table">
      <caption>
        Under each figure: where it lies for eight in ten such players, and then after ten measured shots with
        the club.
      </caption>
      <thead>
        <tr>
          <th scope="col">Club</th>
          <th scope="col">Carry, {unitSign(reader)}</th>
          <th scope="col">Sideways ±, {unitSign(reader)}</th>
          <th scope="col">Mishits, %</th>
        </tr>
      </thead>
      <tbody>
        {clubs.map(({ name, carryMetres, spreadMetres, mishitShare }) => (
          <tr key={name}>
            <th scope="row">
              {unbroken(clubWords(name))}
              <small>{carryMetres.isGuess ? 'a guess' : 'carry as said'}</small>
            </th>
            <SureCell number={carryMetres} words={length} />
            <SureCell number={spreadMetres} words={length} />
            <SureCell number={mishitShare} words={percent} />
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function SureCell(props: {
  readonly number: SureNumber
  readonly words: (value: number) => string
}): ReactElement {
  const { number, words } = props
  return (
    <td>
      {words(number.value)}
      <small>
        {words(number.low)} to {words(number.high)}
      </small>
      <small>
        then {words(number.then.low)} to {words(number.then.high)}
      </small>
    </td>
  )
}
