/** Gives the reader a table, or a text or bytes of another type, as a file of the disk. */
export function saveTable(text: BlobPart, name: string, type = 'text/csv'): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}
