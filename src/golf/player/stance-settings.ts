/** Growth of a shot's spreads and mishit share for each degree of slope under the feet. That they grow is common practice, the sizes are our assumption. */
export const STANCE_DIRECTION_PER_DEGREE = 0.04
export const STANCE_DISTANCE_PER_DEGREE = 0.03
export const STANCE_MISHIT_PER_DEGREE = 0.05
/** Degrees that a degree of uphill turns the start to the left of a right-hander. The side is published (Hiley et al. 2019), the size is our assumption. */
export const STANCE_PULL_PER_DEGREE = 0.2
/** From this slope on, degrees, woods and long irons stay in the bag. Common practice; the figure is our assumption. */
export const STEEP_STANCE_DEGREES = 8
/** Steepest stance that is planned from, degrees: beyond it nobody swings in full. Our assumption. */
export const MOST_STANCE_DEGREES = 20
