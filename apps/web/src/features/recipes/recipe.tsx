const Recipe = () => null;

export default Recipe;
