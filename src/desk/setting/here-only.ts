const LOOPBACK = /^(?:localhost|.*\.localhost|127(?:\.\d{1,3}){3}|\[::1\])$/;

/** Whether an address leads nowhere but to the machine it was made on (RFC 6761, section 6.3; RFC 1122, 3.2.1.3; RFC 4291, 2.5.3; and files). */
export function isHereOnly(address: string): boolean {
  const { protocol, hostname } = new URL(address);
  return protocol === 'file:' || LOOPBACK.test(hostname);
}
