import { expect, test } from 'vitest';
import { isHereOnly } from '../../../src/desk/setting/here-only.ts';

test.each(['http://127.0.0.1:4321/set/#set=x', 'http://localhost/set/', 'http://[::1]:80/set/', 'file:///course/set/'])(
  'a set at %s opens on the machine it was made on only',
  (address) => {
    expect(isHereOnly(address)).toBe(true);
  },
);

test.each(['https://school.example/course/set/', 'http://192.168.1.7:4321/set/', 'http://localhost.example/set/'])(
  'a set at %s can be opened by a class',
  (address) => {
    expect(isHereOnly(address)).toBe(false);
  },
);
