#include "core/record/json_value.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/record/json_writer.h"
#include "tests/core/test_names.h"

namespace wardchalk::json_value_test {
namespace {

std::string outcomeOf(std::string_view json) {
  const Result<JsonValue> read = readJson(json);
  if (read) return "read";
  std::string text(idOf(read.refusal().code));
  if (!read.refusal().typed.empty()) text += " " + read.refusal().typed;
  return text;
}

struct Json {
  const char* name;
  std::string text;
  const char* outcome;
};

class ReadsJson : public testing::TestWithParam<Json> {};
TEST_P(ReadsJson, orSaysWhyNot) { EXPECT_EQ(outcomeOf(GetParam().text), GetParam().outcome); }

using namespace std::string_literals;  // a literal may hold a NUL

INSTANTIATE_TEST_SUITE_P(
    Texts, ReadsJson,
    testing::Values(Json{"an object", R"({"a":1,"b":{"a":2}})", "read"},
                    Json{"the same key in two objects", R"([{"a":1},{"a":1}])", "read"},
                    Json{"NUL behind the end", "{\"a\":1}\0"s, "nul-byte 8"},
                    Json{"text behind a NUL", "{}\0garbage"s, "nul-byte 3"},
                    Json{"NUL at the beginning", "\0{}"s, "nul-byte 1"},
                    Json{"NUL in a text", "{\"a\":\"b\0c\"}"s, "nul-byte 8"},
                    Json{"NUL by its number", R"({"a":"b\u0000c"})", "non-character U+0000"},
                    Json{"NUL by its number in a key", R"({"a\u0000":1})", "non-character U+0000"},
                    Json{"no character", "{\"a\":\"\uFFFE\"}", "non-character U+FFFE"},
                    Json{"no character by its number", R"({"a":"\uffff"})", "non-character U+FFFF"},
                    Json{"the first kept for none", R"(["\ufdd0"])", "non-character U+FDD0"},
                    Json{"the last kept for none", R"(["\ufdef"])", "non-character U+FDEF"},
                    Json{"before those", R"(["\ufdcf \ufdf0 \ufffd"])", "read"},
                    Json{"of the second plane", R"(["\ud83f\udffe"])", "non-character U+1FFFE"},
                    Json{"of the last plane", "[\"\U0010FFFF\"]", "non-character U+10FFFF"},
                    Json{"the last that is one", "[\"\U0010FFFD\"]", "read"},
                    Json{"no character as a key", R"({"\ufffe":1})", "non-character U+FFFE"},
                    Json{"half a pair", R"(["\ud800"])", "not-json byte 9"},
                    Json{"a key twice", R"({"a":1,"b":2,"a":3})", "key-duplicate a"},
                    Json{"a key twice, once by number", R"({"a":1,"\u0061":3})", "key-duplicate a"},
                    Json{"a key twice within", R"({"r":{"a":1,"a":1}})", "key-duplicate r.a"},
                    Json{"twelve deep", "[[[[[[[[[[[[]]]]]]]]]]]]", "read"},
                    Json{"thirteen deep", "[[[[[[[[[[[[[]]]]]]]]]]]]]", "too-deep"},
                    Json{"never closed", std::string(1'000'000, '['), "too-deep"},
                    Json{"nothing", "", "not-json byte 1"}),
    test::NameOfRow());

/// An object of so many keys of six letters.
std::string manyKeys(int count, std::string_view last) {
  std::string json = "{";
  for (int i = 0; i < count; ++i) json += "\"" + std::to_string(100'000 + i) + "\":0,";
  return json.append(last).append("}");
}

/// So many comparisons of each with each would take minutes, and this test its time out.
TEST(ReadsJson, ofVeryManyKeys) {
  for (const int count : {30, 31, 32, 33, 34, 300'000}) {
    EXPECT_EQ(outcomeOf(manyKeys(count, "\"last\":0")), "read") << count;
    EXPECT_EQ(outcomeOf(manyKeys(count, "\"100000\":0")), "key-duplicate 100000") << count;
    EXPECT_EQ(outcomeOf(manyKeys(count, "\"" + std::to_string(100'000 + count - 1) + "\":0")),
              "key-duplicate " + std::to_string(100'000 + count - 1))
        << count;
  }
}

std::string written(std::string_view text) {
  std::string out;
  JsonWriter(out).text(text);
  return out;
}

/// Room that is made ahead stands nowhere in what was written, not even while the writer is still there.
TEST(WritesJson, afterWhatStandsAndBeforeWhatFollows) {
  std::string out = "before ";
  JsonWriter writer(out);
  writer.openObject().key("a").text("1").member("none", "").member("b", "é").closeObject();
  EXPECT_EQ(out, R"(before {"a":"1","b":"é"})");
  out.push_back('\n');
  writer.openList().bare("null").number(-7).openList().closeList().closeList();
  EXPECT_EQ(out, "before {\"a\":\"1\",\"b\":\"é\"}\n[null,-7,[]]");
}

TEST(WritesJson, textsOfEveryLength) {
  std::string expected = "[";
  std::string out;
  {
    JsonWriter writer(out);
    writer.openList();
    for (std::size_t size = 0; size < 5000; size += size < 40 ? 1 : 617)
      for (const char* spelled : {"x", "\\n", "\\u0001"}) {
        const char sign = spelled[0] == 'x' ? 'x' : spelled[1] == 'n' ? '\n' : '\x01';
        writer.text(std::string(size, sign));
        expected.append(expected.size() > 1 ? ",\"" : "\"");
        for (std::size_t i = 0; i < size; ++i) expected.append(spelled);
        expected.push_back('"');
      }
  }
  EXPECT_EQ(out, expected) << "what is left open is no longer than what was written";
}

/// JSON may be looked at in a terminal.
TEST(WritesJson, withoutWhatATerminalObeys) {
  EXPECT_EQ(written("a\x1B[2J\x7F"), R"("a\u001b[2J\u007f")");
  EXPECT_EQ(written("\u009B31m"), R"("\u009b31m")");
  EXPECT_EQ(written("5\u202Egm\u2028\uFEFF"), R"("5\u202egm\u2028\ufeff")");
  EXPECT_EQ(written("\U000E0067"), "\"\U000E0067\"");  // a tag, for which \u has no room
  EXPECT_EQ(written("m² ½ أبجد 鸟 🐦 \u2068x\u2069"), "\"m² ½ أبجد 鸟 🐦 \u2068x\u2069\"");
}

/// Eight bytes are looked at together: each that is written otherwise is seen wherever it stands, and with
/// every plain byte beside it.
TEST(WritesJson, eachByteThatIsWrittenOtherwiseWhereverItStands) {
  const auto isPlain = [](char c) { return c >= ' ' && c <= '~' && c != '"' && c != '\\'; };
  for (int byte = 0; byte < 0x80; ++byte)
    for (std::size_t at = 0; at < 19; ++at)
      for (const char beside : {' ', '!', '#', '[', ']', '~'}) {
        std::string text(19, beside);
        text[at] = static_cast<char>(byte);
        const std::string out = written(text);
        const std::string before = out.substr(1, at);
        const std::string after = out.substr(out.size() - 1 - (18 - at), 18 - at);
        EXPECT_EQ(before + after, std::string(18, beside)) << byte << " at " << at;
        const std::string own = out.substr(1 + at, out.size() - 2 - 18);
        EXPECT_EQ(own == text.substr(at, 1), isPlain(text[at])) << byte << " at " << at << ": " << own;
        EXPECT_TRUE(std::ranges::all_of(out, [](char c) { return c >= ' ' && c <= '~'; }));
      }
}

TEST(WritesJson, whatIsReadAgainAlike) {
  for (std::uint32_t code = 1; code < 0x3000; ++code) {
    std::string text;
    if (code < 0x80)
      text = {static_cast<char>(code)};
    else if (code < 0x800)
      text = {static_cast<char>(0xC0U | code >> 6U), static_cast<char>(0x80U | (code & 63U))};
    else
      text = {static_cast<char>(0xE0U | code >> 12U), static_cast<char>(0x80U | (code >> 6U & 63U)),
              static_cast<char>(0x80U | (code & 63U))};
    const Result<JsonValue> again = readJson(written("<" + text + ">"));
    ASSERT_TRUE(again) << code;
    ASSERT_EQ(again->text, "<" + text + ">") << code;
  }
}

}  // namespace
}  // namespace wardchalk::json_value_test
