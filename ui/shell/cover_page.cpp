#include "ui/shell/cover_page.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include "core/words/phrasebook.h"
#include "ui/access/answers.h"
#include "ui/theme/buttons.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int columnWidth = 720;
constexpr int targetHeight = 44;
constexpr double titleScale = 1.8;
constexpr double factScale = 1.25;

QString listed(const std::vector<Fact>& facts) {
  // A block of rich text takes its direction from its first letter, one that is isolated too (Qt 6.4).
  const QChar fromLeft(0x200E);
  QStringList rows;
  for (const Fact& fact : facts)
    rows << QStringLiteral("<tr><td>%1</td><td>&nbsp;&nbsp;</td><td><b>%2</b></td></tr>")
                .arg(held(fact.label).toHtmlEscaped(), fromLeft + breakable(held(fact.text)).toHtmlEscaped());
  return QStringLiteral("<table cellpadding=\"3\">") + rows.join(QString()) + QStringLiteral("</table>");
}

QString spoken(const std::vector<Fact>& facts) {
  QStringList rows;
  for (const Fact& fact : facts) rows << fromCore(fact.label + ": " + fact.text);
  return rows.join(QStringLiteral(". "));
}

}  // namespace

CoverPage::CoverPage(QWidget* parent)
    : QWidget(parent),
      title_(new PlainLabel(this)),
      text_(new PlainLabel(this)),
      facts_(new PlainLabel(this)) {
  setObjectName(QStringLiteral("cover"));
  title_->setText(held(say(PhraseId::idle_question)));
  giveRole(this, QAccessible::Grouping, title_->text());
  shareLetters(title_, titleScale, true);
  for (QLabel* label : {text_, facts_}) {
    label->setWordWrap(true);
    shareLetters(label, label == facts_ ? factScale : 1.1);
  }
  facts_->setObjectName(QStringLiteral("cover-facts"));
  facts_->setTextFormat(Qt::RichText);
  facts_->setFocusPolicy(Qt::StrongFocus);
  auto* page = new QWidget;
  page->setMaximumWidth(columnWidth);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(16);
  column->addStretch(1);
  for (QLabel* label : {title_, text_, facts_}) column->addWidget(label);
  auto* row = new QHBoxLayout;
  row->setSpacing(12);
  show_ = roomyButton(tr("&Show what was entered"), "cover-show", this, targetHeight);
  goOn_ = roomyButton(tr("&Yes, the same child: go on"), "cover-go-on", this, targetHeight);
  newChild_ = roomyButton(tr("&New child"), "cover-new-child", this, targetHeight);
  for (QPushButton* button : {show_, goOn_, newChild_}) {
    button->setAutoDefault(true);
    button->installEventFilter(this);
    row->addWidget(button);
  }
  row->addStretch(1);
  column->addLayout(row);
  column->addStretch(2);
  new FocusRing(page);
  auto* scroll = new QScrollArea(this);  // at 200 % the facts may need more than the window
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setAlignment(Qt::AlignHCenter);
  scroll->setWidget(page);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scroll);
  connect(show_, &QPushButton::clicked, this, &CoverPage::factsWanted);
  connect(goOn_, &QPushButton::clicked, this, &CoverPage::confirmed);
  connect(newChild_, &QPushButton::clicked, this, &CoverPage::newChildWanted);
}

void CoverPage::cover(int minutes) {
  facts_->clear();
  facts_->setAccessibleName({});
  facts_->hide();
  text_->setText(held(say(PhraseId::idle_covered, {{"n", std::to_string(minutes)}}, minutes)));
  show_->show();
  goOn_->hide();
  show_->setFocus(Qt::OtherFocusReason);
}

void CoverPage::showFacts(const std::vector<Fact>& facts) {
  text_->setText(held(say(PhraseId::idle_confirm)));
  facts_->setText(listed(facts));
  facts_->setAccessibleName(spoken(facts));
  facts_->show();
  goOn_->show();
  show_->hide();
  facts_->setFocus(Qt::OtherFocusReason);  // read first: going on takes a key of its own
}

/// A key that is held down lifts no cover.
bool CoverPage::eventFilter(QObject* watched, QEvent* event) {
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::KeyRelease;
  if (key && static_cast<QKeyEvent*>(event)->isAutoRepeat()) return true;
  return QWidget::eventFilter(watched, event);
}

QString CoverPage::said() const { return title_->text() + u' ' + text_->text(); }

bool CoverPage::showsFacts() const { return !facts_->text().isEmpty(); }

}  // namespace wardchalk::ui
