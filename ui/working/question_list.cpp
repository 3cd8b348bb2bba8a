#include "ui/working/question_list.h"

#include <QGridLayout>
#include <algorithm>

#include "core/words/phrasebook.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/retire.h"
#include "ui/theme/still_box.h"
#include "ui/theme/target.h"
#include "ui/theme/text.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui {

namespace {

/// The first choice: the question is open, as at the start or again.
constexpr int openPlace = 0;

int placeOf(const std::optional<Answer>& answer, const StillBox& box) {
  return answer ? std::max(openPlace, box.findData(static_cast<int>(*answer))) : openPlace;
}

std::optional<Answer> answerAt(int place, const StillBox& box) {
  if (place <= openPlace) return std::nullopt;
  return static_cast<Answer>(box.itemData(place).toInt());
}

}  // namespace

QuestionList::QuestionList(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(14, 6, 14, 2);
  grid_->setHorizontalSpacing(12);
  grid_->setVerticalSpacing(4);
  grid_->setColumnStretch(0, 1);
  setAutoFillBackground(true);
}

bool QuestionList::shows(const std::vector<QuestionWords>& questions) const {
  return std::ranges::equal(rows_, questions, [](const Row& row, const QuestionWords& question) {
    return row.code == question.code && row.text == question.text;
  });
}

void QuestionList::show(const std::vector<QuestionWords>& questions,
                        const std::vector<std::optional<Answer>>& answers) {
  if (!shows(questions)) {
    for (const Row& row : rows_) {
      row.question->clear();
      row.how->clear();
      retire(row.question);
      retire(row.how);
    }
    rows_.clear();
    for (const QuestionWords& question : questions) addRow(question);
    setVisible(!rows_.empty());
  }
  for (std::size_t i = 0; i < rows_.size(); ++i)
    rows_[i].how->setCurrentIndex(placeOf(answers[i], *rows_[i].how));
}

void QuestionList::addRow(const QuestionWords& question) {
  const int at = static_cast<int>(rows_.size());
  const QString text = held(question.text);
  Row row{question.code, question.text, new PlainLabel(withoutMnemonic(text), this), new StillBox(this)};
  row.question->setWordWrap(true);
  row.question->setBuddy(row.how);
  row.how->setObjectName(QStringLiteral("settled_%1").arg(at));
  row.how->setAccessibleName(fromCore(say(PhraseId::ask_howOf, {{"question", loosed(text).toStdString()}})));
  const std::vector<Answer> ways = whatSettles(question.code);
  row.how->addItem(fromCore(say(ways.empty() ? PhraseId::ask_byEntry : PhraseId::ask_open)));
  for (const Answer answer : ways) row.how->addItem(fromCore(settledText(answer)), static_cast<int>(answer));
  style(row);
  grid_->addWidget(row.question, at, 0, Qt::AlignVCenter);
  grid_->addWidget(row.how, at, 1, Qt::AlignTop);
  connect(row.how, &QComboBox::activated, this, [this, code = row.code, box = row.how](int place) {
    Q_EMIT answered(code, answerAt(place, *box));
  });
  rows_.push_back(std::move(row));
}

void QuestionList::style(const Row& row) const {
  const Metrics metrics{0, scale_, {}, 1};
  const QFont font = fontOf(metrics.type(FontRole::finding), {});
  for (QWidget* widget : {static_cast<QWidget*>(row.question), static_cast<QWidget*>(row.how)}) {
    widget->setFont(font);
    widget->setMinimumHeight(qRound(metrics.px(leastTarget)));
  }
  // the edge of a box is drawn in a shade of the window's colour, which would be lost on a dark board
  QPalette edged = palette();
  edged.setColor(QPalette::Window, boardPalette(scheme_)[Ink::quiet]);
  row.how->setPalette(edged);
}

QList<QWidget*> QuestionList::focusOrder() const {
  QList<QWidget*> order;
  for (const Row& row : rows_) order << row.how;
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
