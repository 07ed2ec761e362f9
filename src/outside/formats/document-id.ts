/** A name as an id of files and addresses: small letters, digits and single hyphens, 48 at most; `otherwise` when none is left. */
export function documentId(name: string, otherwise: 'player' | 'course'): string {
  const plain = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 48)
    .replaceAll(/^-+|-+$/g, '')
  return plain === '' ? otherwise : plain
}
