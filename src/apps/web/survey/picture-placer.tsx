import { type MouseEvent, type ReactElement, useState } from 'react'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { type PicturePlace, placePicture } from './place-picture.ts'

/** A photo or plan of the hole that was opened; it stays in this tab and is never sent or kept. */
export interface OpenPicture {
  readonly url: string
  readonly name: string
  readonly width: number
  readonly height: number
  /** How it lies under the survey; `null` while it is being placed. */
  readonly place: PicturePlace | null
  /** The length that is known on it, metres. */
  readonly metres: number
  /** Whether that length lies between two places of its own, not from the tee to the place ahead. */
  readonly hasScale: boolean
}

/** Places a picture under the survey by taps: the tee, straight ahead, and two places whose distance is known. */
export function PicturePlacer(props: {
  readonly picture: OpenPicture
  readonly size: { readonly width: number; readonly height: number }
  readonly onPicture: (picture: OpenPicture) => void
}): ReactElement {
  const { picture, size, onPicture } = props
  const [taps, setTaps] = useState<readonly Point[]>([])
  const scale = Math.min(size.width / picture.width, size.height / picture.height)
  const asked = picture.hasScale ? SCALE_QUESTIONS : QUESTIONS
  const onClick = (event: MouseEvent<HTMLElement>): void => {
    const box = event.currentTarget.getBoundingClientRect()
    const at: Point = [(event.clientX - box.left) / scale, (event.clientY - box.top) / scale]
    const last = taps.at(-1)
    if (last !== undefined && distance(last, at) * scale < LEAST_PIXELS) return
    const next = [...taps, at]
    const [tee, ahead, from, to] = next
    if (next.length < asked.length || tee === undefined || ahead === undefined) {
      setTaps(next)
      return
    }
    const apart = from === undefined || to === undefined ? {} : { apart: [from, to] as const }
    setTaps([])
    onPicture({ ...picture, place: placePicture({ tee, ahead, metres: picture.metres, ...apart }) })
  }
  return (
    <>
      <p className="placer-words" role="status">
        {asked[taps.length]}
      </p>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: a place on a picture has no key; a hole can be typed or traced on blank paper by keys. */}
      <div
        className="placer"
        role="application"
        aria-label={`${picture.name}: ${asked[taps.length] ?? ''}`}
        onClick={onClick}
      >
        <img src={picture.url} alt="" width={picture.width * scale} height={picture.height * scale} />
        {taps.map(([x, y]) => (
          <span key={`${x} ${y}`} className="placer-mark" style={{ left: x * scale, top: y * scale }} />
        ))}
      </div>
      {taps.length > 0 && (
        <button type="button" className="placer-back" onClick={() => setTaps(taps.slice(0, -1))}>
          Back a tap
        </button>
      )}
    </>
  )
}

const QUESTIONS = ['Tap the tee.', 'Tap the place that the known length ends at, straight ahead of the tee.']
const SCALE_QUESTIONS = [
  'Tap the tee.',
  'Tap any place straight ahead of the tee.',
  'Tap one end of the known length.',
  'Tap its other end.',
]

/** Two taps nearer than this are one, CSS pixels. */
const LEAST_PIXELS = 12
