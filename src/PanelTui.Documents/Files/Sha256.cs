using System.Buffers.Binary;
using System.Numerics;

namespace PanelTui.Documents.Files;

/// <summary>SHA-256 as FIPS 180-4 has it (sections 4.1.2, 4.2.2, 5.1.1, 5.3.3 and 6.2.2).</summary>
/// <remarks>
/// A check sum of files here, no secret. The framework's own loads OpenSSL, which a machine with the native build alone
/// need not have. Arithmetic is modulo 2^32.
/// </remarks>
public static class Sha256
{
    private const int BlockBytes = 64;
    private const int LengthBytes = 8;

    // The first 32 bits of the fractional parts of the cube roots of the first 64 primes (4.2.2).
    private static readonly uint[] K =
    [
        0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
        0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
        0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
        0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
        0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
        0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
        0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
        0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2,
    ];

    /// <summary>The 64 lower-case hexadecimal digits of the hash.</summary>
    public static string Hex(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(Hash(content));

    /// <summary>The 32 bytes of the hash.</summary>
    public static byte[] Hash(ReadOnlySpan<byte> content)
    {
        Span<uint> state =
        [
            0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19,
        ];
        var rest = content;
        for (; rest.Length >= BlockBytes; rest = rest[BlockBytes..])
            Compress(state, rest[..BlockBytes]);
        Finish(state, rest, content.Length);
        var hash = new byte[state.Length * sizeof(uint)];
        for (var at = 0; at < state.Length; at++)
            BinaryPrimitives.WriteUInt32BigEndian(hash.AsSpan(at * sizeof(uint)), state[at]);
        return hash;
    }

    /// <summary>The last one or two blocks: a one bit, zeros, and the length in bits (5.1.1).</summary>
    private static void Finish(Span<uint> state, ReadOnlySpan<byte> rest, long length)
    {
        Span<byte> tail = stackalloc byte[2 * BlockBytes];
        tail.Clear();
        rest.CopyTo(tail);
        tail[rest.Length] = 0x80;
        var blocks = rest.Length + 1 + LengthBytes <= BlockBytes ? 1 : 2;
        BinaryPrimitives.WriteInt64BigEndian(tail[((blocks * BlockBytes) - LengthBytes)..], length * 8);
        for (var block = 0; block < blocks; block++)
            Compress(state, tail.Slice(block * BlockBytes, BlockBytes));
    }

    /// <summary>One block of the computation (6.2.2).</summary>
    private static void Compress(Span<uint> state, ReadOnlySpan<byte> block)
    {
        unchecked
        {
            Span<uint> w = stackalloc uint[K.Length];
            Schedule(w, block);
            var (a, b, c, d) = (state[0], state[1], state[2], state[3]);
            var (e, f, g, h) = (state[4], state[5], state[6], state[7]);
            for (var t = 0; t < K.Length; t++)
            {
                var sum1 = BitOperations.RotateRight(e, 6) ^ BitOperations.RotateRight(e, 11) ^ BitOperations.RotateRight(e, 25);
                var t1 = h + sum1 + ((e & f) ^ (~e & g)) + K[t] + w[t];
                var sum0 = BitOperations.RotateRight(a, 2) ^ BitOperations.RotateRight(a, 13) ^ BitOperations.RotateRight(a, 22);
                var t2 = sum0 + ((a & b) ^ (a & c) ^ (b & c));
                (h, g, f, e, d, c, b, a) = (g, f, e, d + t1, c, b, a, t1 + t2);
            }

            state[0] += a;
            state[1] += b;
            state[2] += c;
            state[3] += d;
            state[4] += e;
            state[5] += f;
            state[6] += g;
            state[7] += h;
        }
    }

    private static void Schedule(Span<uint> w, ReadOnlySpan<byte> block)
    {
        unchecked
        {
            for (var t = 0; t < 16; t++)
                w[t] = BinaryPrimitives.ReadUInt32BigEndian(block[(t * sizeof(uint))..]);
            for (var t = 16; t < w.Length; t++)
            {
                var s0 = BitOperations.RotateRight(w[t - 15], 7) ^ BitOperations.RotateRight(w[t - 15], 18) ^ (w[t - 15] >> 3);
                var s1 = BitOperations.RotateRight(w[t - 2], 17) ^ BitOperations.RotateRight(w[t - 2], 19) ^ (w[t - 2] >> 10);
                w[t] = s1 + w[t - 7] + s0 + w[t - 16];
            }
        }
    }
}
