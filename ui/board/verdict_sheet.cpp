#include "ui/board/verdict_sheet.h"

#include <algorithm>
#include <cmath>

#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/theme/text.h"
#include "ui/working/amount_text.h"
#include "ui/working/flag_widget.h"

namespace wardchalk::ui {

namespace {

std::string askLine(const QuestionWords& ask) { return say(PhraseId::board_ask, {{"question", ask.text}}); }

/// While a question is open, the questions stand alone.
AmountWords standingAlone(const QuestionWords& ask) {
  AmountWords words;
  words.none = askLine(ask);
  return words;
}

}  // namespace

VerdictSheet::VerdictSheet(QWidget* parent, const BoardStory& story, Scheme scheme)
    : QWidget(parent), flag_(new FlagWidget(this)) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  flag_->setFocusPolicy(Qt::NoFocus);
  flag_->show(story.sheet());
  AmountWords words = amountWords(story.shown());
  words.prepare.clear();  // the working showed it; the verdict is to be read from the back of a room
  if (story.shown().isOpen())
    for (const QuestionWords& ask : words.asks) addLine(standingAlone(ask));
  else
    addLine(words);
  setScheme(scheme);
}

void VerdictSheet::addLine(const AmountWords& words) {
  auto* line = new AmountText(this);
  line->setFocusPolicy(Qt::NoFocus);
  line->show(words);
  lines_.push_back(line);
}

void VerdictSheet::setScheme(Scheme scheme) {
  flag_->setScheme(scheme);
  for (AmountText* line : lines_) line->setScheme(scheme);
}

int VerdictSheet::heightAt(int width, double scale) {
  flag_->setScale(scale);
  int height = flag_->heightAt(width);
  for (AmountText* line : lines_) {
    line->setScale(scale);
    height += line->heightAt(width);
  }
  return height;
}

/// Every size that is tried loads letters: a few are, first downwards by the root, since wrapped lines grow
/// in both directions, then halfway back while it still fits.
double VerdictSheet::largestScale(int width, double room, double most) {
  constexpr double smallest = 0.5;
  constexpr int halvings = 4;
  double fits = most;
  double tooLarge = most;
  for (int high = heightAt(width, fits); high > room && fits > smallest; high = heightAt(width, fits)) {
    tooLarge = fits;
    fits *= std::min(0.98, std::sqrt(room / high));
  }
  for (int i = 0; i < halvings && tooLarge - fits > 0.01 * fits; ++i) {
    const double between = (fits + tooLarge) / 2;
    (heightAt(width, between) > room ? tooLarge : fits) = between;
  }
  return fits;
}

void VerdictSheet::fit(const QRectF& within, const BoardSizes& sizes) {
  // its texts have margins of their own
  const QRectF room = within.adjusted(-sizes.margin() * 0.6, 0, sizes.margin() * 0.6, 0);
  const int width = qRound(room.width());
  scale_ = largestScale(width, room.height(), sizes.px(2.3));
  heightAt(width, scale_);
  setGeometry(room.toRect());
  int y = 0;
  const auto put = [&](auto* widget) {
    const int height = widget->heightAt(width);
    widget->setGeometry(0, y, width, height);
    widget->setVisible(true);
    y += height;
  };
  put(flag_);
  for (AmountText* line : lines_) put(line);
}

QString verdictSpoken(const BoardStory& story) {
  const Worksheet& sheet = story.sheet();
  const AmountWords words = amountWords(story.shown());
  QStringList said;
  for (const std::string& line : {verdictTitle(sheet), belowTitle(sheet), checksNotMade(sheet)})
    said << fromCore(line);
  if (story.shown().isOpen()) {
    for (const QuestionWords& ask : words.asks) said << held(askLine(ask));
  } else {
    said << fromCore(words.measure + ' ' + words.dose);
    for (const std::string& line : {words.none, words.when, words.run, words.label}) said << fromCore(line);
  }
  said.removeIf([](const QString& line) { return line.trimmed().isEmpty(); });
  return said.join(QStringLiteral(". ")).replace(QStringLiteral(".. "), QStringLiteral(". "));
}

}  // namespace wardchalk::ui
