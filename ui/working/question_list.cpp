#include "ui/working/question_list.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <algorithm>
#include <array>

#include "core/words/phrasebook.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/target.h"
#include "ui/theme/text.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui {

namespace {

struct Whom {
  Answer answer;
  PhraseId words;
};

/// Whom a question can be put to, in the order of the box.
constexpr std::array whoms = {Whom{Answer::prescriber, PhraseId::ask_prescriber},
                              Whom{Answer::pharmacist, PhraseId::ask_pharmacist},
                              Whom{Answer::other, PhraseId::ask_other}};

}  // namespace

QuestionList::QuestionList(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(14, 6, 14, 2);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(4);
  grid_->setColumnStretch(1, 1);
  setAutoFillBackground(true);
}

void QuestionList::setQuestions(const QStringList& questions) {
  for (const Row& row : rows_) {
    delete row.tick;
    delete row.question;
    delete row.whom;
  }
  rows_.clear();
  for (const QString& question : questions) addRow(question);
  setVisible(!rows_.empty());
}

void QuestionList::addRow(const QString& question) {
  const int at = static_cast<int>(rows_.size());
  Row row{new QCheckBox(fromCore(say(PhraseId::ask_asked)), this),
          new PlainLabel(withoutMnemonic(question), this), new QComboBox(this)};
  row.question->setWordWrap(true);
  row.question->setBuddy(row.tick);
  row.tick->setObjectName(QStringLiteral("asked_%1").arg(at));
  row.tick->setAccessibleName(row.tick->text() + u' ' + loosed(question));
  row.whom->setObjectName(QStringLiteral("whom_%1").arg(at));
  row.whom->setAccessibleName(fromCore(say(PhraseId::ask_whom)));
  row.whom->setPlaceholderText(fromCore(say(PhraseId::ask_chooseWhom)));
  for (const Whom& whom : whoms) row.whom->addItem(fromCore(say(whom.words)));
  row.whom->setCurrentIndex(-1);
  style(row);
  grid_->addWidget(row.tick, at, 0, Qt::AlignTop);
  grid_->addWidget(row.question, at, 1, Qt::AlignVCenter);
  grid_->addWidget(row.whom, at, 2, Qt::AlignTop);
  connect(row.tick, &QCheckBox::toggled, this, &QuestionList::answered);
  connect(row.whom, &QComboBox::currentIndexChanged, this, &QuestionList::answered);
  rows_.push_back(row);
}

void QuestionList::voidTicks() {
  for (const Row& row : rows_) {
    const QSignalBlocker quietTick(row.tick);
    const QSignalBlocker quietWhom(row.whom);
    row.tick->setChecked(false);
    row.whom->setCurrentIndex(-1);
  }
  Q_EMIT answered();
}

std::vector<std::optional<Answer>> QuestionList::answers() const {
  std::vector<std::optional<Answer>> answers;
  for (const Row& row : rows_) {
    const int whom = row.whom->currentIndex();
    const bool isAnswered = row.tick->isChecked() && whom >= 0;
    answers.push_back(isAnswered ? std::optional(whoms.at(static_cast<std::size_t>(whom)).answer)
                                 : std::nullopt);
  }
  return answers;
}

bool QuestionList::allAnswered() const {
  return std::ranges::all_of(answers(), [](const auto& answer) { return answer.has_value(); });
}

QStringList QuestionList::whomAsked() const {
  QStringList whom;
  for (const Row& row : rows_) whom << row.whom->currentText();
  return whom;
}

void QuestionList::style(const Row& row) const {
  const Metrics metrics{0, scale_, {}, 1};
  const QFont font = fontOf(metrics.type(FontRole::finding), {});
  for (QWidget* widget : {static_cast<QWidget*>(row.tick), static_cast<QWidget*>(row.question),
                          static_cast<QWidget*>(row.whom)}) {
    widget->setFont(font);
    widget->setMinimumHeight(qRound(metrics.px(leastTarget)));
  }
  // the edges of ticks and boxes are drawn in a shade of the window's colour, which would be lost on a dark
  // board
  QPalette edged = palette();
  edged.setColor(QPalette::Window, boardPalette(scheme_)[Ink::quiet]);
  row.tick->setPalette(edged);
  row.whom->setPalette(edged);
}

QList<QWidget*> QuestionList::focusOrder() const {
  QList<QWidget*> order;
  for (const Row& row : rows_) order << row.tick << row.whom;
  return order;
}

void QuestionList::setScale(double scale) {
  scale_ = scale;
  for (const Row& row : rows_) style(row);
}

void QuestionList::setScheme(Scheme scheme) {
  scheme_ = scheme;
  const BoardPalette& board = boardPalette(scheme);
  QPalette colours = palette();
  for (const QPalette::ColorRole role : {QPalette::Window, QPalette::Base, QPalette::Button})
    colours.setColor(role, board[Ink::card]);
  for (const QPalette::ColorRole role :
       {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::PlaceholderText})
    colours.setColor(role, board[Ink::text]);
  setPalette(colours);
  for (const Row& row : rows_) style(row);
}

}  // namespace wardchalk::ui
