/** The figures of a page in the values of the chosen vehicle: loaded once a vehicle or other units are chosen. */
import '../vehicle/page/reader-figures.ts';
