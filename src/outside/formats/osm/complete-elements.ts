import type { OsmElement, OsmPlace, OsmRelation, OsmWay } from './osm-elements.ts'

/** The elements of a source once each, with the ways whose places are known. */
export interface CompleteElements {
  readonly elements: readonly OsmElement[]
  /** By id of the way. */
  readonly places: ReadonlyMap<string, readonly OsmPlace[]>
  /** Why a way has no places, by id. */
  readonly incomplete: ReadonlyMap<string, string>
  /** `node/1`, `way/2`: elements that other elements are drawn with. */
  readonly carried: ReadonlySet<string>
}

/** Joins elements that occur twice and looks up the places of every way, also of ways that only relations give. */
export function completeElements(given: readonly OsmElement[]): CompleteElements {
  const elements = joinTwins(given)
  const nodes = new Map<string, OsmPlace>()
  const places = new Map<string, readonly OsmPlace[]>()
  const incomplete = new Map<string, string>()
  const carried = new Set<string>()
  for (const element of elements) {
    if (element.type === 'node' && element.place) nodes.set(element.id, element.place)
  }
  for (const element of elements) {
    if (element.type !== 'way') continue
    for (const node of element.nodes) carried.add(`node/${node}`)
    const found = placesOf(element, nodes)
    if (typeof found === 'string') incomplete.set(element.id, found)
    else places.set(element.id, found)
  }
  for (const element of elements) {
    if (element.type !== 'relation') continue
    for (const member of element.members) {
      if (member.type !== 'way') continue
      carried.add(`way/${member.ref}`)
      const known = member.geometry?.filter((place) => place !== null) ?? []
      if (!places.has(member.ref) && known.length > 1 && known.length === member.geometry?.length) {
        places.set(member.ref, known)
      }
    }
  }
  return { elements, places, incomplete, carried }
}

function placesOf(way: OsmWay, nodes: ReadonlyMap<string, OsmPlace>): readonly OsmPlace[] | string {
  const all = way.geometry ?? way.nodes.map((node) => nodes.get(node) ?? null)
  const known = all.filter((place) => place !== null)
  if (all.length === 0) return 'the source does not say where it lies'
  if (known.length < all.length)
    return `the places of ${all.length - known.length} of its ${all.length} points are missing`
  return known.length > 1 ? known : 'it has only one point'
}

// A reply put together from several questions lists an element twice, once with tags and once with its place.
function joinTwins(given: readonly OsmElement[]): OsmElement[] {
  const byId = new Map<string, OsmElement>()
  for (const element of given) {
    const key = `${element.type}/${element.id}`
    const twin = byId.get(key)
    byId.set(key, twin ? joined(twin, element) : element)
  }
  return [...byId.values()]
}

function joined(first: OsmElement, second: OsmElement): OsmElement {
  const tags = { ...second.tags, ...first.tags }
  if (first.type === 'node' && second.type === 'node')
    return { ...first, place: first.place ?? second.place, tags }
  if (first.type === 'way' && second.type === 'way') {
    const nodes = first.nodes.length > 0 ? first.nodes : second.nodes
    return { ...first, nodes, geometry: first.geometry ?? second.geometry, tags }
  }
  if (first.type === 'relation' && second.type === 'relation') {
    return { ...first, members: first.members.length > 0 ? first.members : second.members, tags }
  }
  return first
}

/** Whether a relation is an outline made of ways. */
export function isOutline(relation: OsmRelation): boolean {
  return relation.tags.type === 'multipolygon' || relation.tags.type === 'boundary'
}
