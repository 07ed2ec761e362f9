/** The largest source that is read at once, bytes: 64 MiB. Our assumption: a county of map data is smaller. */
export const LARGEST_SOURCE_BYTES: number = 64 * 1024 * 1024

/** Bytes at the start of a file in which a zero byte or many control characters show that it is no text. Our assumption. */
export const SNIFFED_BYTES = 65_536

/** Share of control characters above which a file is no text. Our assumption: a text file has none but line ends and tabs. */
export const CONTROL_CHARACTER_SHARE = 0.005
