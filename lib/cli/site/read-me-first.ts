/** The instructions that lie on top of the package, for whoever puts the site on a clinic's file server. */
export const readMeFirst = (version: string): string => `Driftline ${version}

1. Copy the folder "site" to your web server. It must be the root of its own host name or port.
2. Give every response the headers of the file for your server, in the folder "servers":
     nginx    nginx.conf    include it in the server block, then: nginx -t && nginx -s reload
     Apache   apache.conf   include it in the virtual host (mod_headers is needed)
     IIS      web.config    copy it into the folder "site"
   The headers belong to exactly these files. Replace both together when you install another version.
3. Serve it by HTTPS, or open it on the machine itself at http://127.0.0.1. Browsers keep local files for no other address.
4. Open it, and check in the browser's developer tools that the response of "/" and of "/duckdb-.../duckdb-browser-eh.worker.js"
   carry the header Content-Security-Policy.

The site is files only. It runs in the browser, keeps what it imports in that browser, and sends nothing to any server.
A workspace belongs to the address where it was opened, host name and port included: choose an address that can stay.
Licence: LICENSE. Licences of the libraries inside: THIRD-PARTY-NOTICES.txt.
`;
