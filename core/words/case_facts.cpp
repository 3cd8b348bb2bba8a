#include "core/words/case_facts.h"

#include <optional>
#include <string_view>

#include "core/medicine/paths.h"
#include "core/unit/print.h"
#include "core/words/read_back.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

std::string asRead(const Age& age) { return printed(age.written); }

template <typename T>
std::string asRead(const T& amount) {
  return printed(amount);
}

/// Parts of one fact with commas between; empty parts are left out.
class Line {
 public:
  void add(const std::string& part, std::string_view between = ", ") {
    if (part.empty()) return;
    if (!text_.empty()) text_.append(between);
    text_.append(part);
  }
  template <typename T>
  void add(const std::optional<T>& part) {
    if (part) add(asRead(*part));
  }
  std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

template <typename T>
void addBand(Line& line, const Band<T>& band, const Phrasebook& book) {
  const auto edge = [&](const std::optional<T>& value, PhraseId phrase) {
    if (value) line.add(say(book, phrase, {{"edge", asRead(*value)}}));
  };
  edge(band.from, PhraseId::band_from);
  edge(band.over, PhraseId::band_over);
  edge(band.below, PhraseId::band_below);
  edge(band.upTo, PhraseId::band_upTo);
}

class FactList {
 public:
  FactList(const Case& inputs, const HouseRules& rules, const Phrasebook& book)
      : case_(inputs), rules_(rules), book_(book) {}

  std::vector<Fact> take() {
    add(PhraseId::fact_child, child());
    add(PhraseId::tag_order, order());
    add(PhraseId::tag_reference, reference());
    add(PhraseId::fact_servesOnly, bands());
    add(PhraseId::tag_maximum, maxima());
    add(PhraseId::fact_stock, stock());
    add(PhraseId::tag_infusion, infusion());
    return std::move(facts_);
  }

 private:
  void add(PhraseId label, std::string text) {
    if (!text.empty()) facts_.push_back({say(book_, label), std::move(text)});
  }

  std::string dose(std::string_view path) const { return readBack(path, case_, rules_, book_); }

  std::string child() const {
    Line line;
    line.add(case_.child.age);
    line.add(case_.child.height);
    line.add(case_.child.weight);
    if (case_.child.bsa)
      line.add(say(book_, PhraseId::fact_charted, {{"surface", printed(*case_.child.bsa)}}));
    return line.take();
  }

  std::string order() const {
    Line line;
    line.add(case_.order.medicine);
    line.add(dose(path::dose), " ");
    if (case_.order.route) line.add(routeText(*case_.order.route, book_));
    if (case_.order.schedule) line.add(case_.order.schedule->text);
    if (case_.order.asNeeded) line.add(say(book_, PhraseId::fact_asNeeded));
    return line.take();
  }

  std::string reference() const {
    Line line;
    const auto& low = case_.reference.low;
    const std::string high = dose(path::high);
    line.add(low ? say(book_, PhraseId::fact_range, {{"low", printed(low->amount)}, {"high", high}}) : high);
    if (case_.reference.schedule) line.add(case_.reference.schedule->text);
    if (case_.reference.route) line.add(routeText(*case_.reference.route, book_));
    return line.take();
  }

  std::string bands() const { return bandWords(case_.reference, book_); }

  std::string maxima() const {
    Line line;
    line.add(dose(path::maxPerDose));
    line.add(dose(path::maxPerDay));
    return line.take();
  }

  std::string stock() const {
    const Stock& stock = case_.stock;
    Line line;
    line.add(stock.strength);
    const auto part = [&](const std::optional<Quantity>& value, PhraseId phrase) {
      if (value) line.add(say(book_, phrase, {{"amount", printed(*value)}}));
    };
    part(stock.content, PhraseId::fact_content);
    part(stock.diluent, PhraseId::fact_diluent);
    part(stock.displacement, PhraseId::fact_displacement);
    part(stock.finalVolume, PhraseId::fact_finalVolume);
    return line.take();
  }

  std::string infusion() const {
    Line line;
    line.add(case_.infusion.volume);
    if (case_.infusion.over)
      line.add(say(book_, PhraseId::fact_over, {{"time", printed(*case_.infusion.over)}}), " ");
    if (case_.infusion.dropFactor)
      line.add(say(book_, PhraseId::fact_dropFactor, {{"drops", printed(*case_.infusion.dropFactor)}}));
    return line.take();
  }

  const Case& case_;
  const HouseRules& rules_;
  const Phrasebook& book_;
  std::vector<Fact> facts_;
};

}  // namespace

std::string bandWords(const Reference& reference, const Phrasebook& book) {
  Line line;
  addBand(line, reference.age, book);
  addBand(line, reference.weight, book);
  addBand(line, reference.bsa, book);
  return line.take();
}

std::vector<Fact> caseFacts(const Case& inputs, const HouseRules& rules, const Phrasebook& book) {
  return FactList(inputs, rules, book).take();
}

}  // namespace wardchalk
