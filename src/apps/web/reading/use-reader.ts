import { useEffect, useState } from 'react'
import type { Reader } from '../desk/desk.ts'
import { ownStorage } from '../documents/own-storage.ts'
import { readReader } from './read-reader.ts'

const KEPT = 'marram.reader'

/** How the reader likes to read, kept in this browser, and what of it the page's style needs put on the page. */
export function useReader(): readonly [reader: Reader, setReader: (reader: Reader) => void] {
  const [reader, setReader] = useState(() => readReader(ownStorage.getItem(KEPT)))
  useEffect(() => {
    document.documentElement.dataset.theme = reader.theme
    document.documentElement.dataset.print = reader.print
    try {
      ownStorage.setItem(KEPT, JSON.stringify(reader))
    } catch {
      // Nothing is lost but the comfort.
    }
  }, [reader])
  return [reader, setReader]
}
