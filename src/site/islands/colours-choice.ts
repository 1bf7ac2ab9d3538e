/** The choice of colours. */
import '../about/page/colours-choice.ts';
