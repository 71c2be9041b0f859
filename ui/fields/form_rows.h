#pragma once

#include <QGridLayout>

#include <vector>

class QLabel;

namespace frontwright {

/// Labels at the left, fields at the right, all in two straight columns: a long label goes on in
/// further lines, and its row is as high as it needs.
class FormRows : public QGridLayout {
    Q_OBJECT
public:
    explicit FormRows(QWidget* parent = nullptr);

    struct Row {
        QLabel* label; ///< nullptr where the field says by itself what it is
        QWidget* field;
    };
    void add(const QString& label, QWidget* field);
    void add(QWidget* field);
    [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }
    void setShown(std::size_t row, bool isShown);

private:
    std::vector<Row> m_rows;
};

} // namespace frontwright
