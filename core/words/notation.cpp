#include "core/words/notation.h"

#include <array>

namespace wardchalk {

namespace {

struct WrittenSign {
  std::string_view plain;
  std::string_view written;
};

/// The text with each of these signs written in another way; everything else stands as it is.
template <std::size_t count>
std::string rewritten(std::string_view text, const std::array<WrittenSign, count>& signs) {
  std::string out;
  while (!text.empty()) {
    std::size_t length = 1;
    std::string_view as = text.substr(0, 1);
    for (const WrittenSign& sign : signs)
      if (text.starts_with(sign.plain)) {
        length = sign.plain.size();
        as = sign.written;
      }
    out.append(as);
    text.remove_prefix(length);
  }
  return out;
}

constexpr std::array xmlSigns = {WrittenSign{"&", "&amp;"}, WrittenSign{"<", "&lt;"},
                                 WrittenSign{">", "&gt;"}, WrittenSign{"\"", "&quot;"}};

std::string xml(std::string_view text) { return rewritten(text, xmlSigns); }

std::string element(std::string_view name, const std::string& inside) {
  return std::string("<").append(name).append(">").append(inside).append("</").append(name).append(">");
}

class MathMl final : public Notation {
 public:
  std::string words(std::string_view text) const override { return element("mtext", xml(text)); }
  std::string number(std::string_view text) const override { return element("mn", xml(text)); }
  std::string sign(std::string_view text) const override { return element("mo", xml(text)); }
  std::string space(bool wide) const override {
    return wide ? "<mspace width=\"2em\"/>" : "<mspace width=\"0.25em\"/>";
  }
  std::string struck(std::string_view unit, std::string_view letter) const override {
    return element("msub", "<menclose notation=\"updiagonalstrike\">" + words(unit) + "</menclose>" +
                               element("mi", xml(letter)));
  }
  std::string fraction(const std::string& over, const std::string& under) const override {
    return element("mfrac", element("mrow", over) + element("mrow", under));
  }
  std::string root(const std::string& inside) const override {
    return element("msqrt", element("mrow", inside));
  }
  std::string power(const std::string& base, std::string_view exponent) const override {
    return element("msup", element("mrow", base) + number(exponent));
  }
  std::string display(const std::vector<std::string>& lines, std::string_view spoken) const override {
    std::string rows;
    for (const std::string& line : lines) rows += element("mtr", element("mtd", element("mrow", line)));
    const std::string all = lines.size() == 1 ? element("mrow", lines.front())
                                              : "<mtable columnalign=\"left\">" + rows + "</mtable>";
    return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" display=\"block\" alttext=\"" + xml(spoken) +
           "\">" + all + "</math>\n";
  }

  std::string documentHead(std::string_view title) const override {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE html>\n"
           "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n<title>" +
           xml(title) + "</title>\n</head>\n<body>\n" + heading(title);
  }
  std::string documentFoot() const override { return "</body>\n</html>\n"; }
  std::string heading(std::string_view text) const override { return element("h2", xml(text)) + "\n"; }
  std::string paragraph(std::string_view text) const override { return element("p", xml(text)) + "\n"; }
  std::string question(std::string_view text) const override { return element("p", "☐ " + xml(text)) + "\n"; }
  std::string note(std::string_view text) const override { return element("p", "• " + xml(text)) + "\n"; }
  std::string step(int number, std::string_view question, std::string_view lookingFor,
                   const std::string& display, std::string_view reason) const override {
    std::string out = element("h3", std::to_string(number) + " " + xml(question)) + "\n";
    if (!lookingFor.empty()) out += paragraph(lookingFor);
    out += display;
    if (!reason.empty()) out += paragraph(reason);
    return out;
  }
};

/// Signs that LaTeX reads as orders, and letters that its usual fonts set only by name. All work in text.
constexpr std::array latexSigns = {
    WrittenSign{"\\", "\\textbackslash{}"}, WrittenSign{"{", "\\{"}, WrittenSign{"}", "\\}"},
    WrittenSign{"$", "\\$"}, WrittenSign{"&", "\\&"}, WrittenSign{"#", "\\#"}, WrittenSign{"%", "\\%"},
    WrittenSign{"_", "\\_"}, WrittenSign{"^", "\\textasciicircum{}"}, WrittenSign{"~", "\\textasciitilde{}"},
    WrittenSign{"\"", "\\textquotedbl{}"}, WrittenSign{"²", "\\textsuperscript{2}"},
    WrittenSign{"³", "\\textsuperscript{3}"}, WrittenSign{"⁴", "\\textsuperscript{4}"},
    WrittenSign{"½", "\\ensuremath{\\tfrac{1}{2}}"}, WrittenSign{"¼", "\\ensuremath{\\tfrac{1}{4}}"},
    WrittenSign{"¾", "\\ensuremath{\\tfrac{3}{4}}"}, WrittenSign{"·", "\\ensuremath{\\cdot}"},
    WrittenSign{"×", "\\ensuremath{\\times}"}, WrittenSign{"÷", "\\ensuremath{\\div}"},
    WrittenSign{"≈", "\\ensuremath{\\approx}"}, WrittenSign{"≤", "\\ensuremath{\\le}"},
    WrittenSign{"≥", "\\ensuremath{\\ge}"}, WrittenSign{"→", "\\ensuremath{\\to}"},
    WrittenSign{"√", "\\ensuremath{\\surd}"}, WrittenSign{"<", "\\ensuremath{<}"},
    WrittenSign{">", "\\ensuremath{>}"}, WrittenSign{"…", "\\ldots{}"}, WrittenSign{"–", "--"},
    // TeX sets letters in the order they stand in; its fonts lack these marks.
    WrittenSign{"\u2068", ""}, WrittenSign{"\u2069", ""}};

std::string latex(std::string_view text) { return rewritten(text, latexSigns); }

class Latex final : public Notation {
 public:
  std::string words(std::string_view text) const override { return order("text", latex(text)); }
  /// In text: there a comma of thousands keeps no space after it.
  std::string number(std::string_view text) const override { return words(text); }
  std::string sign(std::string_view text) const override {
    constexpr std::array signs = {WrittenSign{"×", "\\times"},  WrittenSign{"=", "="},
                                  WrittenSign{"≈", "\\approx"}, WrittenSign{"≤", "\\le"},
                                  WrittenSign{"≥", "\\ge"},     WrittenSign{"→", "\\to"},
                                  WrittenSign{"·", "\\cdot"}};
    return " " + rewritten(text, signs) + " ";
  }
  std::string space(bool wide) const override { return wide ? "\\qquad " : "\\,"; }
  std::string struck(std::string_view unit, std::string_view letter) const override {
    return order("cancel", words(unit)) + "_{" + latex(letter) + "}";
  }
  std::string fraction(const std::string& over, const std::string& under) const override {
    return order("frac", over) + "{" + under + "}";
  }
  std::string root(const std::string& inside) const override { return order("sqrt", inside); }
  std::string power(const std::string& base, std::string_view exponent) const override {
    return "{" + base + "}^{" + latex(exponent) + "}";
  }
  std::string display(const std::vector<std::string>& lines, std::string_view) const override {
    if (lines.size() == 1) return "\\[\n" + lines.front() + "\n\\]\n";
    std::string all = "\\[\n\\begin{aligned}\n";
    for (const std::string& line : lines) all += "& " + line + (&line == &lines.back() ? "\n" : " \\\\\n");
    return all + "\\end{aligned}\n\\]\n";
  }

  std::string documentHead(std::string_view title) const override {
    return "\\documentclass{article}\n\\usepackage[utf8]{inputenc}\n\\usepackage[T1]{fontenc}\n"
           "\\usepackage{amsmath}\n\\usepackage{cancel}\n\\setlength{\\parindent}{0pt}\n\\begin{document}\n" +
           heading(title);
  }
  std::string documentFoot() const override { return "\\end{document}\n"; }
  std::string heading(std::string_view text) const override { return order("section*", latex(text)) + "\n"; }
  std::string paragraph(std::string_view text) const override { return latex(text) + "\\par\n"; }
  std::string question(std::string_view text) const override {
    return "\\fbox{\\phantom{x}} " + paragraph(text);
  }
  std::string note(std::string_view text) const override { return "\\textbullet{} " + paragraph(text); }
  std::string step(int number, std::string_view question, std::string_view lookingFor,
                   const std::string& display, std::string_view reason) const override {
    std::string out = order("subsection*", std::to_string(number) + "\\quad " + latex(question)) + "\n";
    if (!lookingFor.empty()) out += paragraph(lookingFor);
    out += display;
    if (!reason.empty()) out += paragraph(reason);
    return out;
  }

 private:
  static std::string order(std::string_view name, const std::string& inside) {
    return std::string("\\").append(name).append("{").append(inside).append("}");
  }
};

}  // namespace

const Notation& notationOf(Markup markup) {
  static const MathMl mathMl;
  static const Latex latexNotation;
  if (markup == Markup::mathml) return mathMl;
  return latexNotation;
}

}  // namespace wardchalk
