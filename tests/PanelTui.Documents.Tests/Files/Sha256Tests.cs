using System.Security.Cryptography;
using System.Text;
using CsCheck;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Tests.Files;

public class Sha256Tests
{
    /// <summary>NIST, Cryptographic Standards and Guidelines, example values for FIPS 180-4: SHA-256, one block, two blocks, a million letters.</summary>
    [Theory]
    [InlineData("abc", 1, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", 1, "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1")]
    [InlineData("a", 1_000_000, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0")]
    [InlineData("", 1, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    public void The_published_examples_come_out(string text, int times, string hash) =>
        Sha256.Hex(Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat(text, times)))).ShouldBe(hash);

    [Fact]
    public void Every_length_around_a_block_gives_what_the_framework_gives()
    {
        for (var length = 0; length <= 200; length++)
        {
            var bytes = Enumerable.Range(0, length).Select(at => (byte)(at * 7 % 251)).ToArray();
            Sha256.Hash(bytes).ShouldBe(SHA256.HashData(bytes), $"{length} bytes");
        }
    }

    [Fact]
    public void Any_bytes_give_what_the_framework_gives() =>
        Gen.Byte.Array[0, 5000].Sample(bytes => Sha256.Hash(bytes).AsSpan().SequenceEqual(SHA256.HashData(bytes)), iter: 500);
}
