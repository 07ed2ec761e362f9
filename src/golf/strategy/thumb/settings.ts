/** Places of the ball are tried along the hole line so far apart, metres. Our assumption: a club's gap. */
export const PLACE_STEP_METRES = 10
/** "Short of the water" means that the usual finish stays so far before it, metres. Our assumption: a good strike's longer half. */
export const SHORT_OF_WATER_METRES = 10
/** Water further from the hole line than this, metres, is not in play. Our assumption: about two spreads of a long club. */
export const WATER_IN_PLAY_METRES = 25
/** A shot plays to a number when its usual finish comes so near to it, metres. Our assumption: half a gap between clubs. */
export const NUMBER_METRES = 8
/** A leave is a full club when it is so near to the club's total, metres (our assumption), the club being one of so many shortest of the bag (common practice: the wedges). */
export const FULL_CLUB_METRES = 5
export const FULL_CLUBS = 3
/** A layup that could go so much nearer holds back, metres. Our assumption: a club's gap. */
export const HELD_BACK_METRES = 10
/** A pin has a fat side when one side of it has so much more green than the other, metres; aiming there means to pass the pin by so much. Our assumption. */
export const FAT_SIDE_MORE_METRES = 4
export const FAT_SIDE_AIM_METRES = 2
