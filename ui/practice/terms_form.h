#pragma once

#include <QWidget>

#include "core/practice/sessions/set_file.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QSpinBox;

namespace wardchalk::ui {

/// What a teacher fixes for a class besides the problems: learning or a test, with which help, how long, and
/// what an answer needs.
class TermsForm : public QWidget {
  Q_OBJECT

 public:
  explicit TermsForm(QWidget* parent);

  void setTerms(const PracticeSet& set);
  /// Writes the terms into the set and leaves everything else of it.
  void writeInto(PracticeSet& set) const;
  /// What Tab comes to, in the order in which the eye meets it.
  [[nodiscard]] QList<QWidget*> stops() const;

 private:
  QCheckBox* addBox(const QString& text, const char* name);

  QComboBox* mode_;
  QSpinBox* minutes_;
  QGridLayout* boxes_ = nullptr;
  QCheckBox* builder_;
  QCheckBox* hints_;
  QCheckBox* units_;
  QCheckBox* reason_;
};

}  // namespace wardchalk::ui
