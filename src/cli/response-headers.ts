/**
 * What a host says with every file of the site, beside the policy that stands in each page. A page cannot say itself that it is
 * shown in no frame, nor that a file is only what its type says.
 */
export const RESPONSE_HEADERS = {
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'content-security-policy': "frame-ancestors 'none'",
  // The job card takes pictures and reads codes.
  'permissions-policy': 'camera=(self), geolocation=(), microphone=(), serial=(), usb=()',
} as const;

/** The same as files that usual hosts read from the top folder of a site. */
export function headerFiles(): Record<string, string> {
  const headers = Object.entries(RESPONSE_HEADERS);
  const inQuotes = (value: string) => `"${value.replaceAll('"', '\\"')}"`;
  return {
    _headers: ['/*', ...headers.map(([name, value]) => `  ${name}: ${value}`), ''].join('\n'),
    '.htaccess': [
      '<IfModule mod_headers.c>',
      ...headers.map(([name, value]) => `  Header always set ${name} ${inQuotes(value)}`),
      '</IfModule>',
      'ErrorDocument 404 /404.html',
      '',
    ].join('\n'),
  };
}
