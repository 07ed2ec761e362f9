import { type ReactElement, useState } from 'react'
import { METRES_PER_TABLE_UNIT, type TableUnit, tableFigure } from '#outside/formats/table-unit.ts'
import { OpenFile } from '../page/open-file.tsx'
import { TextField } from './hole-fields.tsx'
import type { OpenPicture } from './picture-placer.tsx'

/** A photo or plan of the hole from the disk, laid under the chart to scale. */
export function PictureSection(props: {
  readonly picture: OpenPicture | null
  readonly unit: TableUnit
  /** Metres of the hole by its card or rows, offered as the known length. */
  readonly lengthMetres: number | null
  readonly onPicture: (picture: OpenPicture | null) => void
}): ReactElement {
  const { picture, unit, lengthMetres, onPicture } = props
  const [typed, setTyped] = useState<string | null>(null)
  const [hasScale, setHasScale] = useState(false)
  const [said, setSaid] = useState('')
  const known = typed ?? (lengthMetres === null ? '' : Number(tableFigure(lengthMetres, unit)).toFixed(0))
  const metres = Number(known.replace(',', '.')) * METRES_PER_TABLE_UNIT[unit]
  const isKnown = known.trim() !== '' && metres > 0 && metres <= 2000
  const open = async (file: File): Promise<void> => {
    setSaid('')
    const url = URL.createObjectURL(file)
    try {
      const image = new Image()
      image.src = url
      await image.decode()
      const { naturalWidth: width, naturalHeight: height } = image
      onPicture({ url, name: file.name, width, height, place: null, metres, hasScale })
    } catch {
      URL.revokeObjectURL(url)
      setSaid(`${file.name} is no picture that this browser can show.`)
    }
  }
  return (
    <>
      <div className="hole-fields">
        <TextField label={`A known length, ${unit}`} value={known} onChange={setTyped} />
        <label className="choice-row">
          <input type="checkbox" checked={hasScale} onChange={(event) => setHasScale(event.target.checked)} />
          <span>between two other places, not from the tee</span>
        </label>
      </div>
      <div className="made-buttons">
        <OpenFile
          words="Open a picture"
          label="A picture of the hole"
          accept="image/*"
          isDisabled={!isKnown}
          onOpen={(file) => void open(file)}
        />
        {picture !== null && (
          <>
            <button
              type="button"
              disabled={!isKnown}
              onClick={() => onPicture({ ...picture, place: null, metres, hasScale })}
            >
              Place it anew
            </button>
            <button type="button" onClick={() => onPicture(null)}>
              Take it away
            </button>
          </>
        )}
      </div>
      <p role="status">
        {said}
        {said === '' &&
          (isKnown
            ? 'Your own picture; it stays in this tab and is neither kept nor sent.'
            : 'Type a length that is known on the picture first.')}
      </p>
    </>
  )
}
