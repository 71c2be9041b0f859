#include "ui/fields/form_rows.h"

#include <QLabel>

#include <algorithm>

namespace frontwright {

namespace {

/// In one line up to that many letters. A wrapped label's own hint has another width for each text.
class RowLabel : public QLabel {
public:
    explicit RowLabel(const QString& text) : QLabel(text) { setWordWrap(true); }
    [[nodiscard]] QSize sizeHint() const override {
        constexpr int most = 22;
        const int line = fontMetrics().size(Qt::TextShowMnemonic, text()).width();
        const int width = std::min(line, most * fontMetrics().averageCharWidth()) + 2 * margin();
        return {width, heightForWidth(width)};
    }
};

} // namespace

FormRows::FormRows(QWidget* parent) : QGridLayout(parent) {
    setColumnStretch(1, 1);
}

void FormRows::add(const QString& label, QWidget* field) {
    auto* name = new RowLabel(label);
    name->setBuddy(field);
    addWidget(name, rowCount(), 0);
    addWidget(field, rowCount() - 1, 1);
    m_rows.push_back({name, field});
}

void FormRows::add(QWidget* field) {
    addWidget(field, rowCount(), 1);
    m_rows.push_back({nullptr, field});
}

void FormRows::setShown(std::size_t row, bool isShown) {
    if (m_rows[row].label)
        m_rows[row].label->setVisible(isShown);
    m_rows[row].field->setVisible(isShown);
}

} // namespace frontwright
