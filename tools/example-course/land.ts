import type { Point } from '#numbers/geometry/point.ts'
import { pairs } from './hole-design.ts'

/** Where the invented links lies: open sea, some hundreds of kilometres from any land. */
export const ORIGIN: readonly [longitude: number, latitude: number] = [-31.4, 47.3]

export const COURSE_NAME = 'Sandrel Ness'

/** What the card says of each set of tees, back to front. Invented; in keeping with the lengths. */
export const TEE_SETS: readonly {
  readonly name: string
  readonly par: number
  readonly courseRating: number
  readonly slopeRating: number
}[] = [
  { name: 'skerry', par: 71, courseRating: 72.1, slopeRating: 131 },
  { name: 'drift', par: 71, courseRating: 70.2, slopeRating: 126 },
  { name: 'shell', par: 71, courseRating: 66.1, slopeRating: 115 },
]

/** Ground that no hole owns, course plane in metres, drawn by its corners. */
export interface Tract {
  readonly name: string
  readonly kind: 'sea' | 'cove' | 'heath' | 'scrub' | 'heavy' | 'wood' | 'out' | 'reeds'
  readonly corners: readonly Point[]
}

const COAST: readonly Point[] = pairs([
  -800, 100, -725, 170, -676, 230, -640, 262, -606, 288, -578, 304, -556, 332, -520, 353, -470, 358, -425,
  344, -390, 324, -355, 311, -318, 309, -280, 314, -245, 332, -205, 356, -150, 368, -95, 362, -40, 346, 20,
  345, 80, 366, 140, 388, 205, 392, 265, 384, 318, 362, 365, 328, 408, 300, 450, 287, 487, 286, 530, 282, 580,
  276, 640, 258, 720, 244, 810, 236,
])

/** The wall round the land side, from the sea in the west to the sea in the east. */
const WALL: readonly Point[] = pairs([
  -672, 210, -652, 130, -640, 0, -610, -120, -545, -270, -512, -368, -380, -374, -232, -370, -70, -352, 66,
  -352, 222, -370, 398, -373, 560, -368, 650, -330, 684, -200, 694, -40, 670, 80, 642, 180, 640, 245,
])

export const TRACTS: readonly Tract[] = [
  {
    name: 'sea',
    kind: 'sea',
    corners: [...COAST, [820, 520], [400, 560], [0, 570], [-400, 560], [-810, 500]],
  },
  {
    name: 'cold-cove',
    kind: 'cove',
    corners: pairs([
      -690, 262, -672, 226, -640, 214, -606, 209, -576, 218, -563, 238, -571, 258, -588, 276, -596, 296, -640,
      290,
    ]),
  },
  {
    name: 'beyond-the-wall',
    kind: 'out',
    corners: [...WALL, ...pairs([860, 244, 900, -560, -860, -560, -860, 240])],
  },
  {
    name: 'clubhouse',
    kind: 'out',
    corners: pairs([-20, -283, 20, -285, 22, -246, -18, -244]),
  },
  {
    name: 'ditch-end',
    kind: 'reeds',
    corners: pairs([-516, -52, -492, -66, -466, -52, -468, -28, -494, -14, -516, -26]),
  },
  {
    name: 'high-heath',
    kind: 'heath',
    corners: pairs([-404, 240, -335, 232, -262, 214, -226, 176, -262, 154, -335, 164, -400, 198]),
  },
  {
    name: 'lamb-heath',
    kind: 'heath',
    corners: pairs([8, 258, 58, 274, 116, 238, 134, 186, 98, 150, 62, 164, 24, 140, -18, 176, -6, 228]),
  },
  {
    name: 'common-gorse',
    kind: 'scrub',
    corners: pairs([18, 112, 68, 132, 108, 98, 112, 50, 82, 22, 52, 38, 30, 8, -2, 38, -8, 84]),
  },
  {
    name: 'ewe-hollow',
    kind: 'heavy',
    corners: pairs([30, -22, 72, 2, 66, -44, 22, -62, -2, -34]),
  },
  {
    name: 'north-dunes',
    kind: 'heavy',
    corners: pairs([-58, 326, 2, 322, 62, 340, 118, 364, 152, 336, 86, 302, 4, 292]),
  },
  {
    name: 'loop-gorse',
    kind: 'scrub',
    corners: pairs([346, -52, 374, -32, 388, 2, 372, 28, 348, 22, 337, -12]),
  },
  {
    name: 'long-gorse',
    kind: 'scrub',
    corners: pairs([202, -8, 226, 2, 243, 48, 240, 104, 224, 112, 216, 64, 200, 30]),
  },
  {
    name: 'warden-gorse',
    kind: 'scrub',
    corners: pairs([-542, 24, -524, 58, -528, 98, -546, 122, -559, 84, -553, 46]),
  },
  {
    name: 'wool-hollow',
    kind: 'heavy',
    corners: pairs([-302, -262, -242, -252, -186, -262, -180, -275, -240, -268, -300, -276]),
  },
  {
    name: 'club-pines',
    kind: 'wood',
    corners: pairs([-16, -316, 14, -318, 22, -334, -22, -335]),
  },
  {
    name: 'ride-pines',
    kind: 'wood',
    corners: pairs([178, -262, 226, -256, 264, -266, 244, -277, 192, -276]),
  },
  {
    name: 'east-pines',
    kind: 'wood',
    corners: pairs([546, -18, 574, 6, 578, 56, 560, 84, 540, 52, 536, 14]),
  },
  {
    name: 'corner-pines',
    kind: 'wood',
    corners: pairs([640, -322, 664, -290, 670, -238, 656, -232, 644, -278, 622, -326]),
  },
  {
    name: 'ram-heath',
    kind: 'heath',
    corners: pairs([-420, -62, -352, -74, -300, -68, -268, -80, -310, -92, -380, -90, -424, -80]),
  },
]

/** Running water as bands, course plane in metres; where a hole plays across it, it is yellow. */
export interface Watercourse {
  readonly name: string
  readonly penalty: 'red' | 'yellow'
  readonly widthMetres: number
  readonly points: readonly Point[]
}

export const WATERCOURSES: readonly Watercourse[] = [
  {
    name: 'burn-lower',
    penalty: 'yellow',
    widthMetres: 5,
    points: pairs([352, -400, 346, -350, 338, -310, 336, -262, 341, -218, 349, -182]),
  },
  {
    name: 'burn-beside',
    penalty: 'red',
    widthMetres: 5,
    points: pairs([
      349, -182, 350, -140, 338, -80, 324, -10, 312, 55, 309, 92, 322, 116, 352, 106, 380, 66, 406, 42,
    ]),
  },
  {
    name: 'burn-across',
    penalty: 'yellow',
    widthMetres: 5,
    points: pairs([406, 42, 437, 35, 470, 42, 494, 62]),
  },
  {
    name: 'burn-far',
    penalty: 'red',
    widthMetres: 5,
    points: pairs([494, 62, 512, 96, 516, 140, 506, 186]),
  },
  {
    name: 'burn-mouth',
    penalty: 'yellow',
    widthMetres: 6,
    points: pairs([506, 186, 492, 226, 487, 262, 487, 292]),
  },
  {
    name: 'wall-ditch',
    penalty: 'yellow',
    widthMetres: 4,
    points: pairs([-640, -80, -600, -69, -566, -61, -536, -51, -512, -40]),
  },
]

/** Height of the ground above high water, metres: two low ridges and a fall to the shore. */
export function heightAt(point: Point): number {
  const ridge = (x: number, y: number, height: number, reach: number): number =>
    height * Math.exp(-((point[0] - x) ** 2 + (point[1] - y) ** 2) / (2 * reach * reach))
  return (
    4 +
    ridge(-330, 140, 7, 150) +
    ridge(120, 120, 9, 140) +
    ridge(600, -60, 6, 160) +
    ridge(-260, -330, 4, 170)
  )
}
