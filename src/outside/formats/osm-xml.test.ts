import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import type { SurveyFeature } from '#golf/course/survey-feature.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { parseOsmXml } from './osm-xml.ts'

/** Nodes on a grid of about a metre: `n(x, y)` names the node, and every named node is written into the map. */
function map(build: (n: (x: number, y: number) => string) => string): string {
  const nodes = new Map<string, string>()
  const node = (x: number, y: number): string => {
    const id = String((x + 5000) * 10_000 + y + 5000)
    nodes.set(id, `<node id="${id}" lat="${(y * 9e-6).toFixed(7)}" lon="${(x * 9e-6).toFixed(7)}"/>`)
    return `<nd ref="${id}"/>`
  }
  const body = build(node)
  return `<?xml version="1.0"?>\n<osm version="0.6">${[...nodes.values()].join('\n')}${body}</osm>`
}

const tag = (key: string, value: string): string => `<tag k="${key}" v="${value}"/>`

function ring(n: (x: number, y: number) => string, x: number, y: number, w: number, h: number): string {
  return [n(x, y), n(x + w, y), n(x + w, y + h), n(x, y + h), n(x, y)].join('')
}

function featureOf(xml: string, id: string): SurveyFeature {
  return parseOsmXml(xml, 'map.osm').features.find((feature) => feature.id === id)!
}

describe('parseOsmXml', () => {
  it('turns a closed hole back into a line, which is then asked about', () => {
    const xml = map(
      (n) => `<way id="1">${ring(n, 0, 0, 100, 300)}${tag('golf', 'hole')}${tag('ref', '1')}</way>`,
    )
    expect(featureOf(xml, 'way/1').geometry).toMatchObject({ kind: 'line' })
    const reading = parseOsmXml(xml, 'map.osm')
    const { course, report } = assembleCourse(reading.features, reading)
    expect(course.holes).toEqual([])
    expect(report.needsPerson.map((item) => item.id)).toEqual(['way/1'])
  })

  it('keeps the green as a hole in a fairway drawn round it', () => {
    const xml = map(
      (n) => `
      <way id="1">${ring(n, -30, 100, 60, 200)}</way>
      <way id="2">${ring(n, -10, 260, 20, 20)}${tag('golf', 'green')}</way>
      <way id="3">${n(0, 0)}${n(0, 270)}${tag('golf', 'hole')}${tag('ref', '1')}</way>
      <relation id="9"><member type="way" ref="1" role="outer"/><member type="way" ref="2" role="inner"/>
        ${tag('type', 'multipolygon')}${tag('golf', 'fairway')}</relation>`,
    )
    const reading = parseOsmXml(xml, 'map.osm')
    const { course, report } = assembleCourse(reading.features, reading)
    const fairway = course.areas.find((area) => area.ground === 'fairway')!
    expect(fairway.polygon).toHaveLength(2)
    const [x, y] = course.holes[0]!.line.at(-1)!
    expect(polygonContains(fairway.polygon, [x, y])).toBe(false)
    expect(polygonContains(fairway.polygon, [x + 20, y])).toBe(true)
    expect(report.holes[0]).toMatchObject({ green: 'way/2', fairways: ['relation/9'] })
    expect(report.elements.vertices).toBe(reading.vertices)
  })

  it('takes the tags of an outline from its one outer way where the relation has none, and counts it once', () => {
    const xml = map(
      (n) => `
      <way id="1">${ring(n, 0, 0, 60, 60)}${tag('golf', 'bunker')}</way><way id="2">${ring(n, 20, 20, 10, 10)}</way>
      <relation id="9"><member type="way" ref="1" role="outer"/><member type="way" ref="2" role="inner"/>${tag('type', 'multipolygon')}</relation>`,
    )
    const reading = parseOsmXml(xml, 'map.osm')
    expect(reading.features.map((feature) => feature.id)).toEqual(['relation/9'])
    expect(reading.features[0]!.tags.golf).toBe('bunker')
    expect(reading.features[0]!.geometry).toMatchObject({ kind: 'area' })
  })

  it('keeps the two parts of an outline in two pieces', () => {
    const xml = map(
      (n) => `
      <way id="1">${ring(n, 0, 0, 30, 30)}</way><way id="2">${ring(n, 100, 0, 30, 30)}</way>
      <relation id="9"><member type="way" ref="1" role="outer"/><member type="way" ref="2" role="outer"/>
        ${tag('type', 'multipolygon')}${tag('natural', 'wood')}</relation>`,
    )
    const reading = parseOsmXml(xml, 'map.osm')
    const { course } = assembleCourse(reading.features, reading)
    expect(course.areas.map((area) => area.id)).toEqual(['relation/9 part 1', 'relation/9 part 2'])
  })

  it('asks about an outline of which a way is missing instead of closing it', () => {
    const xml = map(
      (n) => `
      <way id="1">${n(0, 0)}${n(30, 0)}${n(30, 30)}</way>
      <relation id="9"><member type="way" ref="1" role="outer"/><member type="way" ref="404" role="outer"/>
        ${tag('type', 'multipolygon')}${tag('golf', 'fairway')}</relation>`,
    )
    const reading = parseOsmXml(xml, 'map.osm')
    const { report, faults } = assembleCourse(reading.features, reading)
    expect(report.needsPerson.map((item) => item.id)).toEqual(['relation/9'])
    expect(faults.map((fault) => fault.code)).toContain('MAR-IMPORT-012')
  })

  it('survives relations that contain each other', () => {
    const xml = map(
      (n) => `<way id="1">${ring(n, 0, 0, 30, 30)}${tag('golf', 'green')}</way>
      <relation id="8"><member type="relation" ref="9" role=""/>${tag('type', 'multipolygon')}${tag('golf', 'fairway')}</relation>
      <relation id="9"><member type="relation" ref="8" role=""/>${tag('type', 'site')}</relation>`,
    )
    const ids = parseOsmXml(xml, 'map.osm').features.map((feature) => feature.id)
    expect(ids).toEqual(['way/1', 'relation/8', 'relation/9'])
  })

  it('reads names with signs that XML writes in another way', () => {
    const xml = map(
      (n) =>
        `<way id="1">${n(0, 0)}${n(0, 300)}${tag('golf', 'hole')}${tag('name', 'Fire &amp; Water &#8212; &quot;Par 4&quot; &gt;')}</way>`,
    )
    expect(featureOf(xml, 'way/1').tags.name).toBe('Fire & Water — "Par 4" >')
  })

  it('lists an element deleted in an editor as ignored', () => {
    const xml = map(
      (n) => `<way id="1" action="delete">${ring(n, 0, 0, 10, 10)}${tag('golf', 'bunker')}</way>`,
    )
    const reading = parseOsmXml(xml, 'map.osm')
    const { course, report } = assembleCourse(reading.features, reading)
    expect(course.areas).toEqual([])
    expect(report.ignored.map((item) => item.what)).toEqual(['visible=false'])
  })
})
