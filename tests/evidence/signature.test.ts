import { createPrivateKey, generateKeyPairSync } from "node:crypto";
import { describe, expect, it } from "vitest";
import { UsageError } from "../../src/errors.js";
import { fits, publicKeyOf, signerOf } from "../../src/evidence/signature.js";

/** PKCS#8 and SubjectPublicKeyInfo heads of an Ed25519 key: RFC 8410, 7 and 4 (OID 1.3.101.112). */
const PRIVATE_HEAD = "302e020100300506032b657004220420";
const PUBLIC_HEAD = "302a300506032b6570032100";

/** RFC 8032, 7.1, tests 1 and 2. The digits are from memory; that the signatures come out of the keys confirms them. */
const VECTORS = [
  {
    secret: "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
    publicKey: "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
    message: "",
    signature:
      "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
  },
  {
    secret: "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
    publicKey: "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
    message: "72",
    signature:
      "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
  },
];

const pemOf = (secret: string) =>
  createPrivateKey({ key: Buffer.from(PRIVATE_HEAD + secret, "hex"), format: "der", type: "pkcs8" })
    .export({ format: "pem", type: "pkcs8" })
    .toString();

describe("Ed25519", () => {
  it.each(VECTORS)(
    "gives the signature of RFC 8032 for the message $message",
    ({ secret, publicKey, message, signature }) => {
      const signer = signerOf(pemOf(secret), "key.pem");
      const bytes = Buffer.from(message, "hex");
      expect(signer.publicKey).toBe(Buffer.from(PUBLIC_HEAD + publicKey, "hex").toString("base64"));
      expect(Buffer.from(signer.sign(bytes)).toString("hex")).toBe(signature);
      expect(fits(Buffer.from(signature, "hex"), bytes, signer.publicKey)).toBe(true);
      expect(fits(Buffer.from(signature, "hex"), Buffer.from("73", "hex"), signer.publicKey)).toBe(false);
    },
  );

  it("does not fit where key or signature are no such thing", () => {
    const signer = signerOf(pemOf(VECTORS[0]?.secret ?? ""), "key.pem");
    expect(fits(new Uint8Array(63), new Uint8Array(), signer.publicKey)).toBe(false);
    expect(fits(signer.sign(new Uint8Array()), new Uint8Array(), "nonsense")).toBe(false);
  });
});

describe("keys that will not do", () => {
  const rsa = generateKeyPairSync("rsa", { modulusLength: 2048 });
  const own = generateKeyPairSync("ed25519");
  const secret = (key: typeof own.privateKey) => key.export({ format: "pem", type: "pkcs8" }).toString();
  const open = (key: typeof own.publicKey) => key.export({ format: "pem", type: "spki" }).toString();
  const locked = own.privateKey
    .export({ format: "pem", type: "pkcs8", cipher: "aes-256-cbc", passphrase: "x" })
    .toString();

  it.each([
    ["of another kind", secret(rsa.privateKey), /k\.pem holds a key of the kind rsa.*Ed25519/],
    ["public", open(own.publicKey), /k\.pem holds a public key; signing needs the private one/],
    ["locked", locked, /k\.pem is locked with a passphrase.*openssl pkey -in k\.pem/],
    ["no key", "hello", /k\.pem holds no private key.*openssl genpkey/],
  ])("to sign: %s", (_, pem, sentence) => {
    expect(() => signerOf(pem, "k.pem")).toThrow(UsageError);
    expect(() => signerOf(pem, "k.pem")).toThrow(sentence);
  });

  it.each([
    ["of another kind", open(rsa.publicKey), /kind rsa/],
    ["private", secret(own.privateKey), /holds a private key; checking needs the public one/],
    ["no key", "hello", /holds no public key/],
  ])("to check: %s", (_, pem, sentence) => {
    expect(() => publicKeyOf(pem, "k.pem")).toThrow(UsageError);
    expect(() => publicKeyOf(pem, "k.pem")).toThrow(sentence);
  });
});
