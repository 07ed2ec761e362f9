/** A run of neighbouring places with one label, far to near. */
export interface Band<Label, Item> {
  readonly label: Label
  readonly items: readonly Item[]
}

/** Neighbouring items with the same label as one band each; items labelled `null` part bands and are left out. */
export function bandsOf<Label extends string, Item>(
  items: readonly Item[],
  labelOf: (item: Item) => Label | null,
): Band<Label, Item>[] {
  const bands: { label: Label; items: Item[] }[] = []
  let isJoined = false
  for (const item of items) {
    const label = labelOf(item)
    const last = bands.at(-1)
    if (label !== null && isJoined && last?.label === label) last.items.push(item)
    else if (label !== null) bands.push({ label, items: [item] })
    isJoined = label !== null
  }
  return bands
}

/** The least and the most of some figures. */
export function rangeOf(values: readonly number[]): { readonly least: number; readonly most: number } {
  return { least: Math.min(...values), most: Math.max(...values) }
}

/** Distance at which a figure known at two places passes through zero, straight between them. */
export function zeroBetween(
  a: { readonly at: number; readonly value: number },
  b: { readonly at: number; readonly value: number },
): number {
  return a.at + ((b.at - a.at) * a.value) / (a.value - b.value)
}
