#include "core/words/case_facts.h"

#include <string_view>

#include "core/medicine/paths.h"
#include "core/words/fact_words.h"
#include "core/words/given_words.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

/// Parts of one fact with commas between; empty parts are left out.
class Line {
 public:
  void add(const std::string& part, std::string_view between = ", ") {
    if (part.empty()) return;
    if (!text_.empty()) text_.append(between);
    text_.append(part);
  }
  std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

class FactList {
 public:
  explicit FactList(const Case& inputs) : case_(inputs) {}

  std::vector<Fact> take() {
    add(PhraseId::fact_child, child());
    add(PhraseId::tag_order, order());
    add(PhraseId::tag_reference, reference());
    add(PhraseId::fact_servesOnly, bands());
    add(PhraseId::tag_maximum, maxima());
    add(PhraseId::fact_minimum, minima());
    add(PhraseId::fact_stock, stock());
    add(PhraseId::tag_infusion, infusion());
    return std::move(facts_);
  }

  /// Whom the reference serves.
  std::string bands() const {
    struct Edge {
      std::string_view path;
      PhraseId phrase;
    };
    Line line;
    for (const Edge& edge :
         {Edge{path::ageFrom, PhraseId::band_from}, Edge{path::ageOver, PhraseId::band_over},
          Edge{path::ageBelow, PhraseId::band_below}, Edge{path::ageUpTo, PhraseId::band_upTo},
          Edge{path::weightFrom, PhraseId::band_from}, Edge{path::weightOver, PhraseId::band_over},
          Edge{path::weightBelow, PhraseId::band_below}, Edge{path::weightUpTo, PhraseId::band_upTo},
          Edge{path::bsaFrom, PhraseId::band_from}, Edge{path::bsaOver, PhraseId::band_over},
          Edge{path::bsaBelow, PhraseId::band_below}, Edge{path::bsaUpTo, PhraseId::band_upTo}})
      line.add(within(edge.phrase, "edge", edge.path));
    return line.take();
  }

 private:
  void add(PhraseId label, std::string text) {
    if (!text.empty()) facts_.push_back({say(label), std::move(text)});
  }

  std::string entered(std::string_view path) const { return enteredWords(path, case_); }

  /// What is entered at `path` within a phrase, where `name` stands for it.
  std::string within(PhraseId phrase, std::string_view name, std::string_view path) const {
    const std::string text = entered(path);
    return text.empty() ? text : say(phrase, {{name, text}});
  }

  std::string child() const {
    Line line;
    for (const std::string_view path : {path::age, path::sex, path::height, path::weight})
      line.add(entered(path));
    line.add(within(PhraseId::fact_charted, "surface", path::bsa));
    return line.take();
  }

  std::string order() const {
    Line line;
    line.add(entered(path::medicine));
    line.add(orderWords(case_.order), " ");
    if (case_.order.asNeeded) line.add(say(PhraseId::fact_asNeeded));
    if (const auto& most = case_.order.maxDosesPerDay) line.add(mostDosesText(*most));
    return line.take();
  }

  std::string range() const {
    const auto& low = case_.reference.low;
    const auto& high = case_.reference.high;
    if (!high) return {};
    return low ? enteredRange(*low, *high) : enteredShort(*high);
  }

  std::string reference() const {
    Line line;
    line.add(entered(path::referenceMedicine));
    line.add(within(PhraseId::fact_alsoCalled, "names", path::alsoCalled), " ");
    line.add(range(), " ");
    line.add(givenWords(case_.reference.route, case_.reference.schedule));
    return line.take();
  }

  template <typename T>
  static std::string brief(const std::optional<T>& limit) {
    return limit ? enteredShort(*limit) : std::string();
  }

  /// Whatever may not be exceeded: a limit that the working uses is looked up here.
  std::string maxima() const {
    const Reference& reference = case_.reference;
    Line line;
    line.add(brief(reference.maxPerDose));
    line.add(brief(reference.maxPerDay));
    if (const auto& most = reference.maxDosesPerDay) line.add(mostDosesText(*most));
    line.add(brief(reference.maxInfusionRate));
    line.add(brief(reference.maxConcentration));
    return line.take();
  }

  std::string minima() const {
    Line line;
    line.add(brief(case_.reference.minConcentration));
    line.add(within(PhraseId::fact_over, "time", path::minInfusionTime));
    return line.take();
  }

  std::string stock() const {
    Line line;
    line.add(entered(path::strength));
    line.add(within(PhraseId::fact_content, "amount", path::content));
    line.add(within(PhraseId::fact_diluent, "amount", path::diluent));
    line.add(within(PhraseId::fact_displacement, "amount", path::displacement));
    line.add(within(PhraseId::fact_finalVolume, "amount", path::finalVolume));
    return line.take();
  }

  std::string infusion() const {
    Line line;
    line.add(entered(path::infusionVolume));
    line.add(within(PhraseId::fact_over, "time", path::infusionOver), " ");
    if (case_.infusion.dropFactor)
      line.add(say(PhraseId::fact_dropFactor, {{"drops", enteredWords(*case_.infusion.dropFactor)}}));
    return line.take();
  }

  const Case& case_;
  std::vector<Fact> facts_;
};

}  // namespace

std::string bandWords(const Reference& reference) {
  Case inputs;
  inputs.reference = reference;
  return FactList(inputs).bands();
}

std::vector<Fact> caseFacts(const Case& inputs) { return FactList(inputs).take(); }

}  // namespace wardchalk
