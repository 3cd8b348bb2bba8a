#include <array>

#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

constexpr std::array checkPhrases = {
#define WARDCHALK_CHECK(name, id, step) PhraseId::check_##name,
#include "core/check/check_ids.def"
#undef WARDCHALK_CHECK
};

constexpr std::array whyPhrases = {
#define WARDCHALK_WHY(name, id) PhraseId::why_##name,
#include "core/check/why_not.def"
#undef WARDCHALK_WHY
};

/// Most important first: what could harm most if it went unseen.
constexpr std::array notMadeOrder = {
    CheckId::medicine,  CheckId::single,           CheckId::rate,         CheckId::daily,
    CheckId::maxSingle, CheckId::maxDaily,         CheckId::maxDoses,     CheckId::period,
    CheckId::schedule,  CheckId::ageBand,          CheckId::weightBand,   CheckId::bsaBand,
    CheckId::route,     CheckId::concentration,    CheckId::infusionTime, CheckId::infusionRate,
    CheckId::low,       CheckId::concentrationLow, CheckId::size,         CheckId::bsaCharted,
};

/// Whether a check that was not made is named on the flag. Not where the reference names no medicine, nor
/// where it states no most doses for an order that says how often; nor beside the sentence that it is for
/// another medicine, which says that nothing of the dose is checked.
bool isListed(const Worksheet& sheet, const Check& check) {
  if (isLowLeftOut(check)) return true;
  if (check.status != CheckStatus::notChecked || check.why == WhyNot::otherMedicine) return false;
  if (check.id == CheckId::maxDoses) return check.why != WhyNot::noMaximum || sheet.given.order.asNeeded;
  return check.id != CheckId::medicine || check.why != WhyNot::notStated;
}

}  // namespace

bool isLowLeftOut(const Check& check) {
  return check.id == CheckId::low && check.status == CheckStatus::doesNotApply &&
         (check.why == WhyNot::onceOnly || check.why == WhyNot::asNeeded);
}

std::string checksNotMade(const Worksheet& sheet) {
  // While a figure is being changed nothing is judged, and a list of all there is would only hide that.
  if (sheet.finding(FindingCode::finishTyping) || sheet.finding(FindingCode::notWorkedOut)) return {};
  const auto missed = [&](CheckId id) { return isListed(sheet, sheet.check(id)); };
  const bool maxima = missed(CheckId::maxSingle) && missed(CheckId::maxDaily);
  const bool bands = missed(CheckId::ageBand) && missed(CheckId::weightBand) && missed(CheckId::bsaBand);
  std::string list;
  for (const CheckId id : notMadeOrder) {
    if (!missed(id) || (maxima && id == CheckId::maxDaily)) continue;
    if (bands && (id == CheckId::weightBand || id == CheckId::bsaBand)) continue;
    std::string name = checkName(id);
    if (maxima && id == CheckId::maxSingle) name = say(PhraseId::check_maxima);
    if (bands && id == CheckId::ageBand) name = say(PhraseId::check_bands);
    list.append(list.empty() ? "" : ", ").append(name);
  }
  if (list.empty()) return {};
  return say(PhraseId::checks_notMade, {{"list", list}});
}

std::string checkName(CheckId id) { return say(checkPhrases[static_cast<std::size_t>(id)]); }

std::string whyNotText(WhyNot why) { return say(whyPhrases[static_cast<std::size_t>(why)]); }

}  // namespace wardchalk
