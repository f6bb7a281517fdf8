/** What a browser tells of its machine. `deviceMemory` is in GB, told by some browsers only, and never above 8. */
export interface Machine {
  hardwareConcurrency?: number;
  deviceMemory?: number;
}

/** Two workers and the panel itself leave a core to the page. */
const leastCores = 4;
/** A second worker takes as much memory as the first, some 150 MB. */
const leastMemoryGb = 8;

/** How many photos are read at once: two where there are cores and memory for it, one where nobody knows. */
export const workersAtOnce = ({ hardwareConcurrency = 1, deviceMemory = 0 }: Machine): 1 | 2 =>
  hardwareConcurrency >= leastCores && deviceMemory >= leastMemoryGb ? 2 : 1;
