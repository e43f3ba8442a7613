// Stands in for every style sheet: jest draws nothing.
module.exports = {};
