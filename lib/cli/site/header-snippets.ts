import { type HeaderList } from './security-headers';

const nginxSnippet = (
  headers: HeaderList,
): string => `# nginx: include this file inside the server block whose root is the folder "site".
index index.html;
charset utf-8;
error_page 404 /404.html;

${headers.map(([name, value]) => `add_header ${name} "${value}" always;`).join('\n')}

# "expires" adds to the headers above; a second add_header inside a location would drop them.
expires -1;
location ~ \\.wasm$ {
  types { }
  default_type application/wasm;
  expires 1y;
}
location ~ ^/(_next/static|duckdb-[^/]+)/ {
  expires 1y;
}
`;

const apacheSnippet = (
  headers: HeaderList,
): string => `# Apache: put this into the virtual host whose DocumentRoot is the folder "site", or save it there as ".htaccess".
# It needs mod_headers ("a2enmod headers") and refuses to start without it: the site must not run without its headers.
DirectoryIndex index.html
ErrorDocument 404 /404.html
AddType application/wasm .wasm
AddType text/javascript .js
AddDefaultCharset utf-8

${headers.map(([name, value]) => `Header always set ${name} "${value}"`).join('\n')}
`;

const escapedXml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const iisSnippet = (headers: HeaderList): string => `<?xml version="1.0" encoding="utf-8"?>
<!-- IIS: save this file as web.config in the folder "site". -->
<configuration>
  <system.webServer>
    <httpProtocol>
      <customHeaders>
${headers.map(([name, value]) => `        <add name="${name}" value="${escapedXml(value)}" />`).join('\n')}
      </customHeaders>
    </httpProtocol>
    <staticContent>
      <remove fileExtension=".wasm" />
      <mimeMap fileExtension=".wasm" mimeType="application/wasm" />
      <remove fileExtension=".woff2" />
      <mimeMap fileExtension=".woff2" mimeType="font/woff2" />
    </staticContent>
    <httpErrors errorMode="Custom" existingResponse="Replace">
      <remove statusCode="404" />
      <error statusCode="404" path="404.html" responseMode="File" />
    </httpErrors>
  </system.webServer>
</configuration>
`;

/** The same response headers as settings of three web servers: file name and content. */
export const headerSnippets = (headers: HeaderList): Readonly<Record<string, string>> => ({
  'nginx.conf': nginxSnippet(headers),
  'apache.conf': apacheSnippet(headers),
  'web.config': iisSnippet(headers),
});
