import { type ReactElement, useMemo, useRef, useState } from 'react'
import { LIES, type Lie } from '#golf/player/player.ts'
import type { GoOrLayUp } from '#golf/strategy/thumb.ts'
import { choiceSentences } from '#golf/strategy/thumb-words.ts'
import { drawGoOrLayUp } from '#paper/draw/draw-go-or-lay-up.ts'
import { Picture } from '../chart/picture.tsx'
import { useSize } from '../chart/use-size.ts'
import type { Reader } from '../desk/desk.ts'
import { Choice } from '../ledger/choice.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Situation } from '../planning/use-planning.ts'
import { useThumb } from '../planning/use-thumb.ts'
import { lieWord } from '../words.ts'
import { isDrawn } from './is-drawn.ts'

/** Both choices as curves over the distance to the pin, and where they cross in words. */
export function GoingCurves({
  situation,
  reader,
}: {
  readonly situation: Situation
  readonly reader: Reader
}): ReactElement {
  const [lie, setLie] = useState<Lie>('fairway')
  const [over, setOver] = useState<string | null>(null)
  const { answer: thumb, isCurrent, isFull, trouble } = useThumb(situation, lie)
  const from = thumb?.hole.ref === situation.hole.ref ? thumb.lies.find((one) => one.lie === lie) : undefined
  const choices = from?.go.filter(isDrawn) ?? []
  const chosen =
    choices.find((one) => one.over === over) ?? choices.find((one) => one.over === null) ?? choices[0]
  return (
    <>
      <div className="choices">
        <Choice
          label="From"
          value={lie}
          options={FROM.map((value) => ({ value, name: lieWord(value) }))}
          onChange={(word) => setLie(FROM.find((one) => one === word) ?? 'fairway')}
        />
        {choices.length > 1 && (
          <Choice
            label="Going"
            value={chosen?.over ?? ''}
            options={choices.map((one) => ({
              value: one.over ?? '',
              name: one.over === null ? 'for the green' : `over the ${one.over}`,
            }))}
            onChange={(word) => setOver(word === '' ? null : word)}
          />
        )}
      </div>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      {from === undefined || !isCurrent ? (
        <p className="silent">{trouble === null ? 'Reckoning.' : ''}</p>
      ) : chosen === undefined ? (
        <p className="silent">From this lie there is no such choice along the hole.</p>
      ) : (
        <Choices lie={lie} chosen={chosen} reader={reader} />
      )}
      {isCurrent && !isFull && (
        <p className="silent">A first answer, on a coarse grid. The fuller one follows.</p>
      )}
    </>
  )
}

/** Lies from which a full stroke is weighed along a hole. */
const FROM: readonly Lie[] = LIES.filter((lie) => lie !== 'green' && lie !== 'tee')

function Choices({ lie, chosen, reader }: { lie: Lie; chosen: GoOrLayUp; reader: Reader }): ReactElement {
  const place = useRef<HTMLDivElement>(null)
  const width = useSize(place)?.width ?? 0
  const sentences = useMemo(() => choiceSentences(lie, chosen, reader.units), [lie, chosen, reader.units])
  const drawing = useMemo(
    () =>
      width === 0
        ? null
        : drawGoOrLayUp({
            title:
              chosen.over === null ? 'Go for the green or lay up' : `Go over the ${chosen.over} or lay up`,
            description: sentences.join(' '),
            places: chosen.curve,
            crossings: chosen.switches.map(({ at_m: metres }) => metres),
            units: reader.units,
            width,
          }),
    [chosen, sentences, reader.units, width],
  )
  return (
    <>
      <p className="going-words" aria-live="polite">
        {sentences.join(' ')}
      </p>
      <div ref={place}>{drawing !== null && <Picture drawing={drawing} isDecoration />}</div>
    </>
  )
}
