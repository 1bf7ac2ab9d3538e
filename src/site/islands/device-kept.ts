/** On About: what the device keeps, and how it is forgotten. */
import '../about/page/device-kept.ts';
