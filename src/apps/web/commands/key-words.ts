const NAMES: Readonly<Record<string, string>> = {
  ' ': 'Space',
  ctrl: 'Control',
  shift: 'Shift',
  ArrowLeft: 'Left arrow',
  ArrowRight: 'Right arrow',
  ArrowUp: 'Up arrow',
  ArrowDown: 'Down arrow',
  PageUp: 'Page up',
  PageDown: 'Page down',
}

/** The keys of a row one after the other as they stand on a keyboard: `Control`, `Shift`, `Z`. */
export function keyWords(chord: string): readonly string[] {
  const held = chord.match(/(?:ctrl|shift)(?=\+)/g) ?? []
  const key = chord.slice(held.join('+').length + (held.length === 0 ? 0 : 1))
  return [...held, key].map((part) => NAMES[part] ?? (part.length === 1 ? part.toUpperCase() : part))
}
