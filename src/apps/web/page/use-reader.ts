import { useEffect, useState } from 'react'
import type { Reader } from '../desk/desk.ts'
import { ownStorage } from '../documents/own-storage.ts'

const KEPT = 'marram.reader'

/** How the reader likes to read, kept in this browser, and the theme put on the page. */
export function useReader(): readonly [reader: Reader, setReader: (reader: Reader) => void] {
  const [reader, setReader] = useState(keptReader)
  useEffect(() => {
    document.documentElement.dataset.theme = reader.theme
    try {
      ownStorage.setItem(KEPT, JSON.stringify(reader))
    } catch {
      // Nothing is lost but the comfort.
    }
  }, [reader])
  return [reader, setReader]
}

function keptReader(): Reader {
  const usual: Reader = { units: 'yards', windUnit: 'm/s', theme: 'day' }
  try {
    const kept = JSON.parse(ownStorage.getItem(KEPT) ?? '{}') as Partial<Reader>
    return {
      units: kept.units === 'metres' ? 'metres' : usual.units,
      windUnit: kept.windUnit === 'mph' || kept.windUnit === 'knots' ? kept.windUnit : usual.windUnit,
      theme: kept.theme === 'night' ? 'night' : usual.theme,
    }
  } catch {
    return usual
  }
}
