#include "core/practice/lines/practice_words.h"

#include <array>

#include "core/number/unseen_text.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

namespace {

constexpr std::array faultPhrases = {
#define WARDCHALK_LINE_FAULT(name, id) PhraseId::fault_##name,
#include "core/practice/lines/line_faults.def"
#undef WARDCHALK_LINE_FAULT
};

constexpr std::array remarkPhrases = {
#define WARDCHALK_LINE_REMARK(name, id, error) PhraseId::remark_##name,
#include "core/practice/lines/line_remarks.def"
#undef WARDCHALK_LINE_REMARK
};

}  // namespace

std::string sentence(const LineFault& fault) {
  const bool unlike = fault.code == LineFaultCode::unlikeUnits;
  if (unlike && (fault.typed.empty() || fault.instead.empty())) {
    const std::string& named = fault.typed.empty() ? fault.instead : fault.typed;
    return say(PhraseId::fault_unlikeUnitsNone, {{"typed", withUnseenNamed(named)}});
  }
  return say(faultPhrases[static_cast<std::size_t>(fault.code)],
             {{"typed", withUnseenNamed(fault.typed)}, {"instead", withUnseenNamed(fault.instead)}});
}

std::string sentence(const LineRemark& remark) {
  return say(remarkPhrases[static_cast<std::size_t>(remark.code)],
             {{"typed", withUnseenNamed(remark.typed)}, {"instead", withUnseenNamed(remark.instead)}});
}

}  // namespace wardchalk
