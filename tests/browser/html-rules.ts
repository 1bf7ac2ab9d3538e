/** How strictly the pages are read: every rule of the validator's recommended and document sets, but for those said here. */
import { type ConfigData, HtmlValidate, type ResolvedConfig, StaticConfigLoader } from 'html-validate';

const CONFIG: ConfigData = {
  root: true,
  extends: ['html-validate:recommended', 'html-validate:document'],
  rules: {
    // Scripts and styles are files of this site (the policy allows no other); a hash guards against another's server.
    'require-sri': ['error', { target: 'crossorigin' }],
    // The limit is about results of web searches, and ours end in "· Headertank"; two vehicles need their whole names.
    'long-title': ['error', { maxlength: 110 }],
    // Technique H32 is for forms that are sent. Calculators and cards answer as one types and send nothing; the one form
    // that is sent, the search, is sent by its button in search.test.ts.
    'wcag/h32': 'off',
  },
};

/** The rules are worked out once: for each page anew would take half the time. */
class SameForAll extends StaticConfigLoader {
  private ownConfig: ResolvedConfig | undefined;

  override getConfigFor(handle: string): ResolvedConfig {
    const resolved = this.ownConfig ?? super.getConfigFor(handle);
    if (resolved instanceof Promise)
      throw new Error('The configuration of html-validate is no longer read at once.');
    this.ownConfig = resolved;
    return resolved;
  }
}

const validator = new HtmlValidate(new SameForAll(CONFIG));

/** @returns a line each: place, rule, what is wrong */
export async function htmlFaults(page: string, name: string): Promise<string[]> {
  const { results } = await validator.validateString(page, name);
  return results.flatMap(({ messages }) =>
    messages.map(
      ({ line, column, ruleId, message, selector }) =>
        `${name}:${line}:${column} ${ruleId}: ${message} (${selector ?? 'the page'})`,
    ),
  );
}
