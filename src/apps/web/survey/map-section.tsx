import { type ReactElement, useState } from 'react'
import type { LonLat } from '#numbers/geometry/tangent-plane.ts'
import type { ServedMap } from './map-layer.tsx'

/** The map of the server under the chart: the tee is found on it once, and the hole then lies on the earth. */
export function MapSection(props: {
  /** `null` = the server was started without one. */
  readonly map: ServedMap | null
  /** Where the hole begins, or another of the course; `null` = nobody has said yet. */
  readonly near: LonLat | null
  /** Holes of the course without a start where others have one. */
  readonly unplaced: readonly string[]
  readonly hasStart: boolean
  readonly isShown: boolean
  readonly onShow: (isShown: boolean) => void
  readonly onFind: (near: LonLat) => void
}): ReactElement {
  const { map, near, unplaced, hasStart, isShown } = props
  const [typed, setTyped] = useState<string | null>(null)
  if (map === null)
    return (
      <p>
        None: the desk works without a network. Where the owner of a map allows it, start the desk with{' '}
        <code>marram serve --map</code> and the address of its tiles to trace over it.
      </p>
    )
  const text = typed ?? (near === null ? '' : `${near[1].toFixed(5)} ${near[0].toFixed(5)}`)
  const place = placeOf(text)
  return (
    <>
      <div className="hole-fields">
        <div className="typed-field name-field">
          <label htmlFor="map-near">Latitude and longitude near the tee, degrees</label>
          <input
            id="map-near"
            type="text"
            autoComplete="off"
            placeholder="55.9412 -1.8031"
            value={text}
            onChange={(event) => setTyped(event.target.value)}
          />
        </div>
        {hasStart && (
          <label className="choice-row">
            <input
              type="checkbox"
              checked={isShown}
              onChange={(event) => props.onShow(event.target.checked)}
            />
            <span>under the chart</span>
          </label>
        )}
      </div>
      <div className="made-buttons">
        <button
          type="button"
          disabled={place === null}
          onClick={() => {
            if (place === null) return
            setTyped(null)
            props.onFind(place)
          }}
        >
          {hasStart ? 'Find the tee again' : 'Find the tee on the map'}
        </button>
      </div>
      <p role="status">
        {text.trim() !== '' && place === null
          ? 'Two numbers with decimal points are needed, north and east positive, such as 55.9412 -1.8031.'
          : 'What is traced is as good as the map. Trace only as its owner allows.'}
      </p>
      {unplaced.length > 0 && (
        <p>
          Without a start on the earth yet: {unplaced.length === 1 ? 'hole' : 'holes'} {unplaced.join(', ')}.
          Their bearings are invented, and they are laid some kilometres off the others.
        </p>
      )}
    </>
  )
}

/** Latitude and longitude as a person types them; `null` when it is no place where tiles are. */
function placeOf(text: string): LonLat | null {
  const [, latitude, longitude] = (PLACE.exec(text.trim().replaceAll('−', '-')) ?? []).map(Number)
  if (latitude === undefined || longitude === undefined) return null
  return Math.abs(latitude) <= 85 && Math.abs(longitude) <= 180 ? [longitude, latitude] : null
}

const PLACE = /^([+-]?\d{1,2}(?:\.\d+)?)°?(?:\s*[,;]\s*|\s+)([+-]?\d{1,3}(?:\.\d+)?)°?$/
