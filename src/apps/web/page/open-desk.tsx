import { type ReactElement, useEffect, useState } from 'react'
import type { Reader } from '../desk/desk.ts'
import { useLibrary } from '../documents/use-library.ts'
import { HoleDesk } from './hole-desk.tsx'
import { TroubleNote } from './trouble-note.tsx'

const KEPT = 'marram.reader'

/** Opens the desk once the store has answered, in the reader's units and theme. */
export function OpenDesk(): ReactElement {
  const { library, trouble } = useLibrary()
  const [reader, setReader] = useState(keptReader)
  useEffect(() => {
    document.documentElement.dataset.theme = reader.theme
    localStorage.setItem(KEPT, JSON.stringify(reader))
  }, [reader])
  if (trouble !== null)
    return (
      <main className="desk">
        <TroubleNote trouble={trouble} />
      </main>
    )
  if (library === null) return <main className="desk" aria-busy="true" />
  return <HoleDesk library={library} reader={reader} onReader={setReader} />
}

function keptReader(): Reader {
  const usual: Reader = { units: 'yards', windUnit: 'm/s', theme: 'day' }
  try {
    const kept = JSON.parse(localStorage.getItem(KEPT) ?? '{}') as Partial<Reader>
    return {
      units: kept.units === 'metres' ? 'metres' : usual.units,
      windUnit: kept.windUnit === 'mph' || kept.windUnit === 'knots' ? kept.windUnit : usual.windUnit,
      theme: kept.theme === 'night' ? 'night' : usual.theme,
    }
  } catch {
    return usual
  }
}
